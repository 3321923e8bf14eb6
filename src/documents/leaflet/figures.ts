import type { OwnerWords } from '#content/languages/owner-words.ts'
import { procedures } from '#content/procedures/index.ts'
import { studies } from '#content/studies/index.ts'
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

export type Known = Exclude<Published, { kind: 'unknown' }>

/**
 * What the studies counted for one operation: one row for each outcome and each way of counting (animals, ears,
 * operations never share a row), then what nobody counted.
 */
export function figureBlocks(procedure: ProcedureId, species: Species, numbered: Numbered, said: OwnerWords): Block[] {
  const words = said.leaflet
  const risks = procedureNamed(procedure, procedures).risks.map(({ outcome }) => outcome)
  const answers = risks.map((outcome) => ({ outcome, known: knownFor(procedure, species, outcome) }))
  const rows = answers.flatMap(({ outcome, known }) => known.map((one) => rowOf(outcome, one, numbered, said)))
  const missing = answers.filter(({ known }) => known.length === 0).map(({ outcome }) => plainName(outcome, said))
  const { what, of, how } = words.figuresColumns
  return [
    heading(3, fill(words.figures, { option: said.options.options[procedure].name })),
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
            strong(`${fill(words.unknown, { species: said.papers.species[species] })}: `),
            text(`${missing.join('; ')}. ${words.unknownIntro}`),
          ]),
        ]),
  ]
}

/** What is published of one outcome, once for each unit it was counted in; none when nobody counted it. */
export function knownFor(procedure: ProcedureId, species: Species, outcome: OutcomeCode): Known[] {
  return countUnits
    .map((unit) => publishedFor({ species, procedure, unit, outcome }, studies))
    .filter((published): published is Known => published.kind !== 'unknown')
}

function rowOf(outcome: OutcomeCode, published: Known, numbered: Numbered, words: OwnerWords): Words[] {
  const said = sayPublished(published, words.odds)
  const found = published.kind === 'one-study' ? [published.found] : published.found
  const mark = fill(words.leaflet.source, { numbers: numbered(found.map(({ row }) => row)) })
  const rest = [...said.lines.map((line) => `– ${line}`), ...said.notes].join('\n')
  return [
    plainName(outcome, words),
    ofHundred(published, said, words.leaflet),
    [text(`${said.sentence} ${mark}`), ...(rest === '' ? [] : [small(`\n${rest}`)])],
  ]
}

/** The number to look at: a middle with its range, a range alone, or how high it could still be. */
function ofHundred(published: Known, { middle, low, high }: SaidOdds, words: OwnerWords['leaflet']): Words {
  const about = { middle: String(middle), low: String(low), high: String(high) }
  if (published.kind !== 'one-study') return fill(words.ofSpan, about)
  if (published.found.count.events === 0) return fill(words.ofNone, about)
  const middleWords = middle === 0 ? words.ofFewer : fill(words.ofMiddle, about)
  return [strong(middleWords), small(`\n${fill(low === 0 ? words.ofAtMost : words.ofRange, about)}`)]
}

function plainName(outcome: OutcomeCode, { odds }: OwnerWords): string {
  return odds.outcomes[outcome].operated
}
