import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { papersInEnglish } from '#content/wording/papers.ts'
import { reportInEnglish as words } from '#content/wording/report.ts'
import { flagsOfGiven } from '#core/dosing/flag-given.ts'
import { authorNamed, type CaseFile, personNamed } from '#core/journal/clinic.ts'
import { compareText } from '#core/journal/compare-text.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import { fill } from '#core/outcome/finding.ts'
import { timeOf } from '../case/case-words.ts'
import { drugName } from '../case/drug-name.ts'
import { sayUnit } from '../case/say-quantity.ts'
import { findingLines } from '../dose-sheet/plan-tables.ts'
import { type Block, list, paragraph, type Words } from '../render/model.ts'
import { marksOf } from './course.ts'

const knowledge = { drugs: formulary, rules: dosingRules, plans: [], policies: [] }

/** What a check would have stopped or questioned. The record is never refused and never corrected; it is flagged. */
function flagged({ theCase }: CaseFile, given: readonly Line<BodyOf<'drug-given'>>[]): Block[] {
  const flags = flagsOfGiven(theCase, knowledge)
  const lines = given.flatMap((line) =>
    findingLines(flags.get(line.header.id) ?? []).map(
      (said): Words => [{ kind: 'strong', text: `${timeOf(line)} ${drugName(line.body.drug)}. ` }, ...said],
    ),
  )
  if (lines.length === 0) return []
  return [paragraph([{ kind: 'strong', text: words.flaggedHeading }]), paragraph(words.flagged), list(lines)]
}

/**
 * What was given and what was thrown away, as it was recorded; nothing is corrected or left out. Whoever gave it stands
 * in a column of its own where that is asked for.
 */
export function drugBlocks(file: CaseFile, operations: readonly string[], by: string | null = null): Block[] {
  const ofAll = <Name extends 'drug-given' | 'drug-wasted'>(kind: Name) =>
    operations
      .flatMap((operation) => linesAbout(file.theCase, kind, operation))
      .sort((a, b) => compareText(a.at, b.at) || compareText(a.header.id, b.header.id))
  const given = ofAll('drug-given')
  const wasted = ofAll('drug-wasted')
  const { time, drug, amount, volume, where } = words.drugColumns
  const rows = given.map((line): Words[] => {
    const { body } = line
    const written =
      body.written === null
        ? []
        : [{ kind: 'small', text: ` ${fill(words.asWritten, { written: body.written })}` } as const]
    return [
      timeOf(line),
      [{ kind: 'text', text: drugName(body.drug) }, ...written, ...marksOf(line)],
      sayUnit(body.amount),
      body.volume === null ? '' : sayUnit(body.volume),
      body.site === null ? body.route : `${body.route}, ${body.site}`,
      ...(by === null ? [] : [authorNamed(file, line.header.author)]),
    ]
  })
  const table: Block = {
    kind: 'table',
    caption: words.drugsCaption,
    rowHeader: false,
    columns: [
      { head: time, align: 'left', share: 1 },
      { head: drug, align: 'left', share: 2.2, weight: 'strong' },
      { head: amount, align: 'right', share: 1.7 },
      { head: volume, align: 'right', share: 1.1 },
      { head: where, align: 'left', share: by === null ? 3 : 2.2 },
      ...(by === null ? [] : [{ head: by, align: 'left', share: 2 } as const]),
    ],
    rows,
  }
  const thrown = wasted.map(({ body }) =>
    fill(words.wasted, {
      amount: sayUnit(body.amount),
      drug: drugName(body.drug),
      ampoule: body.ampoule,
      because: body.because,
      witness: body.witness === null ? papersInEnglish.nobodyAvailable : personNamed(file, body.witness),
    }),
  )
  return [
    rows.length === 0 ? paragraph(words.noDrug) : table,
    ...flagged(file, given),
    ...(thrown.length === 0 ? [] : [paragraph([{ kind: 'strong', text: words.terms.wasted }]), list(thrown)]),
  ]
}
