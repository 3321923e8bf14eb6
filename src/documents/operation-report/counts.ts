import { papersInEnglish } from '#content/wording/papers.ts'
import { reportInEnglish as words } from '#content/wording/report.ts'
import type { Case } from '#core/journal/fold.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import { fill } from '#core/outcome/finding.ts'
import { type Block, facts } from '../render/model.ts'

/** Each count that belongs to an operation, done or not, and a loud line for one that does not agree. */
export function countBlocks(theCase: Case, operation: string): Block[] {
  const counts = linesAbout(theCase, 'count', operation)
  const whens = ['before', 'before-closing', 'final'] as const
  const rows = whens.map((when) => {
    const items = counts.filter(({ body }) => body.when === when).flatMap(({ body }) => body.items)
    const said = items.map(({ what, found, expected }) =>
      fill(words.countItem, { what, found: String(found), expected: String(expected) }),
    )
    return [words.counts[when], said.join('; ') || papersInEnglish.notRecorded] as const
  })
  const pack = counts.at(-1)?.body.throatPack
  const wrong = counts.flatMap(({ body }) =>
    body.items
      .filter(({ expected, found }) => expected !== found)
      .map(({ what, expected, found }) =>
        fill(words.countWrong, {
          when: words.counts[body.when],
          what,
          expected: String(expected),
          found: String(found),
        }),
      ),
  )
  return [
    facts(...rows, [words.terms.throatPack, pack ? words.throatPack[pack] : papersInEnglish.notRecorded]),
    ...(wrong.length === 0
      ? []
      : [{ kind: 'callout', tone: 'stop', word: words.countWrongWord, lines: wrong } as const]),
  ]
}
