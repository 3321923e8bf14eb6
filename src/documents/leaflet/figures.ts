import { quoted } from '#content/evidence/quoted.ts'
import type { OwnerWords } from '#content/languages/owner-words.ts'
import { procedures } from '#content/procedures/index.ts'
import type { ProcedureId } from '#core/animal/procedure.ts'
import type { Species } from '#core/animal/species.ts'
import type { OutcomeCode } from '#core/evidence/outcome-code.ts'
import { foundIn } from '#core/evidence/published.ts'
import { quotedFor, sayUncounted } from '#core/evidence/quoted.ts'
import type { SaidOdds } from '#core/evidence/say-published.ts'
import { sayTold } from '#core/evidence/say-told.ts'
import { type Told, toldPerUnit } from '#core/evidence/told.ts'
import type { Case } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { procedureNamed } from '#core/procedures/procedure.ts'
import { type Evidence, evidenceOf } from '../case/evidence-of.ts'
import { type Block, heading, paragraph, small, strong, text, type Words } from '../render/model.ts'
import type { Numbered } from './numbered-sources.ts'

/**
 * What is told of one operation: one row for each outcome and each way of counting (animals, ears, operations never
 * share a row), studies and our own approved counts together, then what nobody counted.
 */
export function figureBlocks(
  procedure: ProcedureId,
  { species, house }: { readonly species: Species; readonly house: Case },
  numbered: Numbered,
  said: OwnerWords,
): Block[] {
  const words = said.leaflet
  const evidence = evidenceOf(house)
  const answers = procedureNamed(procedure, procedures).risks.map(({ outcome }) => {
    return { outcome, known: knownFor({ species, procedure, outcome }, evidence) }
  })
  const rows = answers.flatMap(({ outcome, known }) => known.map((one) => rowOf(outcome, one, numbered, said)))
  const missing = answers
    .filter(({ known }) => known.length === 0)
    .map(({ outcome }) => uncountedName({ species, procedure, outcome }, said))
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

type Question = { readonly species: Species; readonly procedure: ProcedureId; readonly outcome: OutcomeCode }

/** What is told of one outcome, once for each unit that studies or we counted it in; none when nobody counted it. */
export function knownFor(question: Question, evidence: Evidence): readonly Told[] {
  return toldPerUnit(question, evidence).filter(({ published, own }) => published.kind !== 'unknown' || own !== null)
}

/** The name of an outcome that nobody counted, with what reviews quote of it. */
export function uncountedName(question: Question, words: OwnerWords): string {
  return sayUncounted(plainName(question.outcome, words), quotedFor(question, quoted), words.told.quoted)
}

function rowOf(outcome: OutcomeCode, told: Told, numbered: Numbered, words: OwnerWords): Words[] {
  const { published } = told
  const said = sayTold(told, words)
  const found = foundIn(published)
  const mark = found.length === 0 ? '' : fill(words.leaflet.source, { numbers: numbered(found.map(({ row }) => row)) })
  const rest = [...said.lines.map((line) => `– ${line}`), ...said.notes].join('\n')
  const main = [...(published.kind === 'unknown' ? [] : [said.sentence]), ...said.own].join(' ')
  return [
    plainName(outcome, words),
    ofHundred(told, said, words.leaflet),
    [text(`${main} ${mark}`.trim()), ...(rest === '' ? [] : [small(`\n${rest}`)])],
  ]
}

/** The number to look at: a middle with its range, a range alone, how high it could still be, or none. */
function ofHundred({ published, updated }: Told, { middle, low, high }: SaidOdds, words: OwnerWords['leaflet']): Words {
  if (low === null || high === null) return words.ofNothing
  const about = { middle: String(middle), low: String(low), high: String(high) }
  const noneSeen = published.kind === 'one-study' && published.found.count.events === 0
  if (noneSeen && !updated) return fill(words.ofNone, about)
  if (middle === null) return fill(words.ofSpan, about)
  const middleWords = middle === 0 ? words.ofFewer : fill(words.ofMiddle, about)
  return [strong(middleWords), small(`\n${fill(low === 0 ? words.ofAtMost : words.ofRange, about)}`)]
}

function plainName(outcome: OutcomeCode, { odds }: OwnerWords): string {
  return odds.outcomes[outcome].operated
}
