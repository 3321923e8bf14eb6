import { procedures } from '#content/procedures/index.ts'
import { studies } from '#content/studies/index.ts'
import { leafletInEnglish as words } from '#content/wording/leaflet.ts'
import { oddsInEnglish } from '#content/wording/odds.ts'
import { optionsInEnglish } from '#content/wording/options.ts'
import { papersInEnglish } from '#content/wording/papers.ts'
import type { ProcedureId } from '#core/animal/procedure.ts'
import type { Species } from '#core/animal/species.ts'
import type { OutcomeCode } from '#core/evidence/outcome-code.ts'
import { type Published, publishedFor } from '#core/evidence/published.ts'
import { type SaidOdds, sayPublished } from '#core/evidence/say-published.ts'
import { countUnits } from '#core/evidence/study.ts'
import { fill } from '#core/outcome/finding.ts'
import { procedureNamed } from '#core/procedures/procedure.ts'
import { type Block, heading, paragraph, small, strong, text, type Words } from '../render/model.ts'
import type { Numbered } from './numbered-sources.ts'

type Known = Exclude<Published, { kind: 'unknown' }>

/**
 * What the studies counted for one operation: one row for each outcome and each way of counting (animals, ears,
 * operations never share a row), then what nobody counted.
 */
export function figureBlocks(procedure: ProcedureId, species: Species, numbered: Numbered): Block[] {
  const risks = procedureNamed(procedure, procedures).risks.map(({ outcome }) => outcome)
  const answers = risks.map((outcome) => ({ outcome, known: knownFor(procedure, species, outcome) }))
  const rows = answers.flatMap(({ outcome, known }) => known.map((one) => rowOf(outcome, one, numbered)))
  const missing = answers.filter(({ known }) => known.length === 0).map(({ outcome }) => plainName(outcome))
  const { what, of, how } = words.figuresColumns
  return [
    heading(3, fill(words.figures, { option: optionsInEnglish.options[procedure].name })),
    ...(rows.length === 0
      ? [paragraph(words.noFigures)]
      : [
          {
            kind: 'table',
            caption: words.figuresCaption,
            rowHeader: true,
            columns: [
              { head: what, align: 'left', share: 2 },
              { head: of, align: 'left', share: 1.6, weight: 'strong' },
              { head: how, align: 'left', share: 4 },
            ],
            rows,
          } as const,
        ]),
    ...(missing.length === 0
      ? []
      : [
          paragraph([
            strong(`${fill(words.unknown, { species: papersInEnglish.species[species] })}: `),
            text(`${missing.join('; ')}. ${words.unknownIntro}`),
          ]),
        ]),
  ]
}

function knownFor(procedure: ProcedureId, species: Species, outcome: OutcomeCode): Known[] {
  return countUnits
    .map((unit) => publishedFor({ species, procedure, unit, outcome }, studies))
    .filter((published): published is Known => published.kind !== 'unknown')
}

function rowOf(outcome: OutcomeCode, published: Known, numbered: Numbered): Words[] {
  const said = sayPublished(published, oddsInEnglish)
  const found = published.kind === 'one-study' ? [published.found] : published.found
  const mark = fill(words.source, { numbers: numbered(found.map(({ row }) => row)) })
  const rest = [...said.lines.map((line) => `– ${line}`), ...said.notes].join('\n')
  return [
    plainName(outcome),
    ofHundred(published, said),
    [text(`${said.sentence} ${mark}`), ...(rest === '' ? [] : [small(`\n${rest}`)])],
  ]
}

/** The number to look at: a middle with its range, a range alone, or how high it could still be. */
function ofHundred(published: Known, { middle, low, high }: SaidOdds): Words {
  const about = { middle: String(middle), low: String(low), high: String(high) }
  if (published.kind !== 'one-study') return fill(words.ofSpan, about)
  if (published.found.count.events === 0) return fill(words.ofNone, about)
  const middleWords = middle === 0 ? words.ofFewer : fill(words.ofMiddle, about)
  return [strong(middleWords), small(`\n${fill(low === 0 ? words.ofAtMost : words.ofRange, about)}`)]
}

function plainName(outcome: OutcomeCode): string {
  return oddsInEnglish.outcomes[outcome].operated
}
