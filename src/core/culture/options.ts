import type { Temporal } from 'temporal-polyfill'
import { doseLines } from '#core/dosing/dose-lines.ts'
import { type DoseCode, type DoseFinding, isBlock } from '#core/dosing/findings.ts'
import type { DosedAnimal, DosingKnowledge, Given, PlannedLine } from '#core/dosing/request.ts'
import type { Sourced } from '#core/evidence/sourced.ts'
import { type DoseRow, type Drug, drugById, rowKey } from '#core/formulary/drug.ts'
import { bySeverity } from '#core/outcome/finding.ts'
import { convert } from '#core/units/quantity.ts'
import { readTyped } from '#core/units/read-typed.ts'
import type { Agent } from './agent.ts'
import type { Edition } from './breakpoint.ts'
import { type CultureCaution, speaksOf } from './caution.ts'
import type { SusceptibilityFacts } from './facts.ts'
import type { AgainstIsolate, CultureOption, Dosing, Way } from './option.ts'
import { inOrder } from './option-order.ts'
import type { IsolateReading } from './reading.ts'
import { standingOf } from './standing.ts'
import { tierOf } from './stewardship.ts'

export type OptionsQuestion = {
  /** Those that the drug must work against; a person may leave out what is held for contamination. */
  readonly isolates: readonly IsolateReading[]
  /** Null while nobody wrote its species down: then nothing is dosed. */
  readonly animal: DosedAnimal | null
  readonly given: readonly Given[]
  readonly at?: Temporal.Instant
  /** Doses that a person chose, each of one drug; without one the range stands there and no dose. */
  readonly lines?: readonly PlannedLine[]
  /** What it swallows at home: another drug that a choice meets, never a dose of the drug itself. */
  readonly atHome?: readonly Given[]
}

export type OptionFacts = Pick<SusceptibilityFacts, 'agents' | 'tiers'> & {
  readonly editions: readonly Pick<Edition, 'id' | 'convention'>[]
  readonly cautions: readonly CultureCaution[]
  readonly knowledge: DosingKnowledge
}

/**
 * Every drug that the report names, as an answer to "can it be used, in this ear, in this animal": yes, nobody can say,
 * or no, and why. Nothing is chosen: first those that should be taken first, by the category of stewardship.
 *
 * @example cultureOptions({ isolates, animal, given: [] }, facts).filter(({ verdict }) => verdict === 'could')
 */
export function cultureOptions(asked: OptionsQuestion, facts: OptionFacts): CultureOption[] {
  const question = { ...asked, isolates: asked.isolates.filter(isBacterium) }
  const named = question.isolates.flatMap(({ results }) => results.map(({ agent }) => agent))
  const options = facts.agents.filter(({ id }) => named.includes(id)).map((agent) => optionOf(agent, question, facts))
  return inOrder(options)
}

/** A yeast that grew beside them is said with the isolates; no antibacterial drug has to work against it. */
function isBacterium({ findings }: IsolateReading): boolean {
  return !findings.some(({ code }) => code === 'not-a-bacterium')
}

function optionOf(agent: Agent, question: OptionsQuestion, facts: OptionFacts): CultureOption {
  const { animal } = question
  const drug = agent.formulary === null ? undefined : drugById(facts.knowledge.drugs, agent.formulary)
  const against = question.isolates.map((isolate) => againstIsolate(agent, isolate, facts))
  const needs = [...new Set(against.flatMap((one) => neededBy(one) ?? []))]
  const rows = animal && drug ? rowsOf(drug, animal) : []
  const dosing = dosingOf(drug, animal, rows)
  const ways = drug ? waysOf(drug, rows, question, facts) : []
  const findings = [...needsFindings(needs, drug, rows, question, facts), ...tooLow(needs, ways)]
  const option = { agent: agent.id, name: agent.name, drug: drug?.id ?? null, against, needs, findings, dosing, ways }
  return {
    ...option,
    verdict: verdictOf(option),
    inAnimal: inAnimal(ways),
    harms: harmsOf(agent, rows, animal, facts),
    tier: tierOf(agent, facts.tiers) ?? null,
  }
}

function againstIsolate(agent: Agent, isolate: IsolateReading, { editions }: OptionFacts): AgainstIsolate {
  const reading = isolate.results.find((result) => result.agent === agent.id)
  const about = { isolate: isolate.key, printed: isolate.printed, reading: reading ?? null }
  if (isolate.organism === null) return { ...about, standing: 'doubt', because: 'organism-unknown' }
  return { ...about, ...standingOf(reading, editions) }
}

function neededBy({ standing, reading }: AgainstIsolate): string | null {
  return standing === 'works-at-dose' ? (reading?.breakpoint?.dose ?? null) : null
}

/** A course by any way but the ear: no breakpoint says anything about drops. */
function rowsOf(drug: Drug, { species }: DosedAnimal): readonly DoseRow[] {
  return drug.doses.filter((row) => row.species === species && row.use === 'antibiotic_course')
}

function dosingOf(drug: Drug | undefined, animal: DosedAnimal | null, rows: readonly DoseRow[]): Dosing {
  if (!drug) return { kind: 'no-drug' }
  if (!animal) return { kind: 'no-animal' }
  const none = drug.none.find(
    ({ species, use }) => species === animal.species && (use === undefined || use === 'antibiotic_course'),
  )
  if (none?.why === 'never') return { kind: 'forbidden', because: none.because }
  if (rows.length > 0) return { kind: 'rows' }
  return { kind: 'no-row', because: none?.because ?? '' }
}

/** Each row is asked by itself: two ways of one drug are never meant together. */
function waysOf(drug: Drug, rows: readonly DoseRow[], question: OptionsQuestion, facts: OptionFacts): Way[] {
  const chosen = (question.lines ?? []).filter((line) => drugById(facts.knowledge.drugs, line.drug)?.id === drug.id)
  const asked = rows.flatMap((row) => {
    const mine = chosen.filter((line) => fits(row, line))
    const blank: PlannedLine = { id: `${drug.id}: ${rowKey(row)}`, ...wordsOf(drug, row) }
    return (mine.length > 0 ? mine : [blank]).map((line) => ({ row: rowKey(row), asked: line }))
  })
  return asked.flatMap(({ row, asked: line }) => {
    const answer = judged(line, question, facts)
    return answer ? [{ row, asked: line, line: answer }] : []
  })
}

function fits(row: DoseRow, line: PlannedLine): boolean {
  return (
    line.use === row.use &&
    (line.route === undefined || row.routes.includes(line.route)) &&
    (line.qualifier === undefined || line.qualifier === row.qualifier)
  )
}

function wordsOf({ id }: Drug, { use, routes, qualifier, formulation }: DoseRow): Omit<PlannedLine, 'id'> {
  const [route] = routes
  return {
    drug: id,
    use,
    ...(route && { route }),
    ...(qualifier && { qualifier }),
    ...(formulation && { formulation }),
  }
}

function judged(line: PlannedLine, { animal, given, at, atHome = [] }: OptionsQuestion, facts: OptionFacts) {
  if (!animal) return undefined
  const before = [...given, ...atHome.filter(({ drug }) => drug !== line.drug)]
  return doseLines({ animal, given: before, lines: [line], ...(at && { at }) }, facts.knowledge).lines[0]
}

/** What the record of the animal says about a drug, whatever dose somebody chooses. */
const aboutAnimal: ReadonlySet<DoseCode> = new Set<DoseCode>([
  'age-unknown',
  'caution',
  'drums-unknown',
  'drying-drug-with-dry-eye',
  'excluded',
  'excluded-by-given',
  'given-active-unknown',
  'kidney-drug-with-raised-creatinine',
  'ototoxic-with-open-ear',
  'pair-forbidden',
  'pair-to-think-about',
  'unsafe-in-pregnancy',
])

function inAnimal(ways: readonly Way[]): DoseFinding[] {
  const all = ways.flatMap(({ line }) => line.findings.filter(({ code }) => aboutAnimal.has(code)))
  const same = (a: DoseFinding, b: DoseFinding) =>
    a.code === b.code && JSON.stringify(a.about) === JSON.stringify(b.about)
  return bySeverity(all.filter((one, place) => all.findIndex((other) => same(one, other)) === place))
}

function isBarred({ line }: Way): boolean {
  return line.findings.some((finding) => aboutAnimal.has(finding.code) && isBlock(finding))
}

function verdictOf(option: Pick<CultureOption, 'against' | 'dosing' | 'ways' | 'findings'>): CultureOption['verdict'] {
  const { against, dosing, ways, findings } = option
  if (against.some(({ standing }) => standing === 'fails')) return 'cannot'
  if (dosing.kind === 'forbidden') return 'cannot'
  if (ways.length > 0 && ways.every(isBarred)) return 'cannot'
  if (findings.some(({ code }) => code === 'dose-needed-over-most')) return 'cannot'
  const isDoubtful = against.length === 0 || against.some(({ standing }) => standing === 'doubt')
  if (isDoubtful || dosing.kind !== 'rows' || findings.length > 0) return 'doubt'
  return 'could'
}

/** `10 mg/kg every 24 h` begins with the dose; what does not is said and never guessed. */
function doseIn(words: string) {
  const [, first = words] = /^\s*([\d.]+ ?mg\/kg)\b/u.exec(words) ?? []
  const read = readTyped(first, { decimalMark: '.', wanted: ['mg/kg'] })
  return read.kind === 'answer' ? convert(read.answer, 'mg/kg') : undefined
}

const overMost: ReadonlySet<DoseCode> = new Set<DoseCode>([
  'dose-five-times-range',
  'dose-unit-suspected',
  'over-daily-maximum',
  'over-daily-maximum-at-shortest',
  'over-single-maximum',
])

/** A dose that a standard asks for and this species must not have: 20 mg/kg of enrofloxacin is for dogs only. */
function needsFindings(
  needs: readonly string[],
  drug: Drug | undefined,
  rows: readonly DoseRow[],
  question: OptionsQuestion,
  facts: OptionFacts,
): CultureOption['findings'] {
  if (!drug || rows.length === 0) return []
  return needs.flatMap((words): CultureOption['findings'] => {
    const dose = doseIn(words)
    const about = { dose: words, drug: drug.name }
    if (!dose) return [{ code: 'dose-needed-unread', about }]
    const isOver = rows.every((row) => {
      const line = judged({ id: 'needed', ...wordsOf(drug, row), dose }, question, facts)
      return line?.findings.some(({ code }) => overMost.has(code)) === true
    })
    return isOver ? [{ code: 'dose-needed-over-most', about }] : []
  })
}

function tooLow(needs: readonly string[], ways: readonly Way[]): CultureOption['findings'] {
  return ways.flatMap(({ line }) =>
    needs.flatMap((words): CultureOption['findings'] => {
      const chosen = line.dose && convert(line.dose, 'mg/kg')
      const least = doseIn(words)
      if (!chosen || !least || chosen.value.gte(least.value)) return []
      return [{ code: 'dose-below-needed', about: { dose: words, chosen: chosen.toString(), drug: line.drug } }]
    }),
  )
}

function harmsOf(
  agent: Agent,
  rows: readonly DoseRow[],
  animal: DosedAnimal | null,
  { cautions }: OptionFacts,
): Sourced<string>[] {
  const ofRows = rows.flatMap(({ cautions: { value, ...known } }) =>
    value.filter(({ when }) => when === undefined).map(({ words }) => ({ ...known, value: words })),
  )
  const ofAgent = cautions.filter(
    (caution) => speaksOf(caution, agent) && (caution.species === undefined || caution.species === animal?.species),
  )
  const all = [...ofRows, ...ofAgent]
  return all.filter((one, place) => all.findIndex(({ value }) => value === one.value) === place)
}
