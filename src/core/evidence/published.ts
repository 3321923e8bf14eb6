import type { Species } from '../animal/species.ts'
import type { Outcome } from '../outcome/outcome.ts'
import {
  type Count,
  exactInterval,
  type Interval,
  type NoCasesYet,
  wilsonInterval,
} from '../stats/proportion-interval.ts'
import type { OutcomeCode } from './outcome-code.ts'
import {
  type AsideReason,
  type CountUnit,
  countUnits,
  type Study,
  type StudyOutcome,
  type StudyProcedure,
} from './study.ts'

/** Dogs and cats, ears and animals, procedures, any and lasting: a question names one of each. */
export type PublishedQuestion = {
  readonly species: Species
  readonly procedure: StudyProcedure
  readonly unit: CountUnit
  readonly outcome: OutcomeCode
}

/** One usable count with both intervals. */
export type PublishedCount = {
  readonly row: StudyOutcome
  readonly count: Count
  readonly share: number
  readonly exact: Interval
  readonly wilson: Interval
}

/** A row that is shown but not counted, with the reason. */
export type AsideRow = { readonly row: StudyOutcome; readonly because: AsideReason }

type Asked = { readonly question: PublishedQuestion; readonly aside: readonly AsideRow[] }
export type Published = Asked &
  (
    | { readonly kind: 'one-study'; readonly found: PublishedCount }
    /** Lowest and highest observed share. Not pooled: each study stands with its own interval. */
    | { readonly kind: 'several-studies'; readonly found: readonly PublishedCount[]; readonly span: Interval }
    /** One study whose sentence can be read in more than one way: the span, not one number. */
    | { readonly kind: 'two-readings'; readonly found: readonly PublishedCount[]; readonly span: Interval }
    | { readonly kind: 'unknown' }
  )

/**
 * What the published studies allow us to say about one outcome.
 *
 * @example publishedFor({ species: 'dog', procedure: 'teca-lbo', unit: 'animal', outcome: 'horner_any' }, studies)
 * @see One study is one study: a single usable study is shown as its own count and interval.
 */
export function publishedFor(question: PublishedQuestion, studies: readonly Study[]): Published {
  const rows = studies.flatMap((study) => study.rows).filter((row) => concerns(row, question))
  const { kept, dropped } = withoutOverlaps(
    rows.filter((row) => answers(row, question)),
    studies,
  )
  const readings = kept.length === 0 ? readingsOfOneStudy(rows, question) : []
  const used = new Set([...kept, ...readings])
  const aside = rows
    .filter((row) => !used.has(row))
    .map((row) => ({ row, because: dropped.has(row) ? ('overlap' as const) : reasonAside(row, question) }))

  const found = [...kept, ...readings].map(publishedCount)
  const [only, ...others] = found
  if (only === undefined) return { kind: 'unknown', question, aside }
  if (readings.length > 0) return { kind: 'two-readings', question, found, span: reachOf(found), aside }
  if (others.length === 0) return { kind: 'one-study', question, found: only, aside }
  const shares = found.map(({ share }) => share)
  const span = { low: Math.min(...shares), high: Math.max(...shares) }
  return { kind: 'several-studies', question, found, span, aside }
}

/**
 * The same outcome in each unit that was counted, side by side and never added; one unknown when none was.
 *
 * @example publishedPerUnit({ species: 'dog', procedure: 'teca-lbo', outcome: 'horner_any' }, studies)
 */
export function publishedPerUnit(
  question: Omit<PublishedQuestion, 'unit'>,
  studies: readonly Study[],
): readonly Published[] {
  const known = countUnits
    .map((unit) => publishedFor({ ...question, unit }, studies))
    .filter(({ kind }) => kind !== 'unknown')
  return known.length > 0 ? known : [publishedFor({ ...question, unit: 'animal' }, studies)]
}

/**
 * Every question for which some study holds a usable count, in the order of the studies.
 *
 * @example answeredQuestions('cat', 'vbo', studies)
 */
export function answeredQuestions(
  species: Species,
  procedure: StudyProcedure,
  studies: readonly Study[],
): PublishedQuestion[] {
  const questions = new Map<string, PublishedQuestion>()
  for (const row of studies.flatMap((study) => study.rows)) {
    const question = { species, procedure, unit: row.unit, outcome: row.outcome }
    if (answers(row, question)) questions.set(`${row.unit} ${row.outcome}`, question)
  }
  return [...questions.values()]
}

/** Worth showing for this question at all, counted or aside. */
function concerns(row: StudyOutcome, { species, procedure, outcome }: PublishedQuestion): boolean {
  const sameAnimals = row.species === species || row.species === 'mixed'
  return row.outcome === outcome && sameAnimals && (row.procedure === procedure || row.touches.includes(procedure))
}

function matches(row: StudyOutcome, question: PublishedQuestion): boolean {
  return (
    row.species === question.species &&
    row.procedure === question.procedure &&
    row.unit === question.unit &&
    row.outcome === question.outcome &&
    row.counted.kind === 'count'
  )
}

function answers(row: StudyOutcome, question: PublishedQuestion): boolean {
  return row.pool.use === 'primary' && matches(row, question)
}

function reasonAside(row: StudyOutcome, question: PublishedQuestion): AsideReason {
  if (row.pool.use !== 'primary') return row.pool.because
  return row.procedure === question.procedure ? 'other-unit' : 'other-procedure'
}

/** Of two studies that may hold the same animals only the larger is counted; the newer, when they are alike. */
function withoutOverlaps(rows: readonly StudyOutcome[], studies: readonly Study[]) {
  const byId = new Map(studies.map((study) => [study.id, study]))
  const overlap = (a: string, b: string) => byId.get(a)?.overlaps.some((other) => other.study === b) ?? false
  const yearOf = (row: StudyOutcome) => byId.get(row.study)?.year ?? 0
  const kept: StudyOutcome[] = []
  const dropped = new Set<StudyOutcome>()
  for (const row of [...rows].sort((a, b) => totalOf(b) - totalOf(a) || yearOf(b) - yearOf(a))) {
    if (kept.some(({ study }) => overlap(study, row.study) || overlap(row.study, study))) dropped.add(row)
    else kept.push(row)
  }
  return { kept: rows.filter((row) => kept.includes(row)), dropped }
}

function readingsOfOneStudy(rows: readonly StudyOutcome[], question: PublishedQuestion): StudyOutcome[] {
  const readings = rows.filter((row) => row.reading !== undefined && matches(row, question))
  return new Set(readings.map(({ study }) => study)).size === 1 ? readings : []
}

/** Every count that stands behind what is said: one study, several, or each reading of one sentence; none for the unknown. */
export function foundIn(published: Published): readonly PublishedCount[] {
  if (published.kind === 'unknown') return []
  return published.kind === 'one-study' ? [published.found] : published.found
}

/**
 * One row with its share and both 95 % intervals. A row without a count has none and must not be asked.
 *
 * @example publishedCount(row).exact // { low: 0.214, high: 0.315 } for 81 of 309
 */
export function publishedCount(row: StudyOutcome): PublishedCount {
  if (row.counted.kind !== 'count') throw new Error(`${row.study}, ${row.outcome}: no count.`)
  const { events, total } = row.counted
  const count = { events, total }
  return {
    row,
    count,
    share: events / total,
    exact: counted(exactInterval(count)),
    wilson: counted(wilsonInterval(count)),
  }
}

function counted(outcome: Outcome<Interval, NoCasesYet>): Interval {
  if (outcome.kind === 'refusal') throw new Error('A published count without a case cannot be constructed.')
  return outcome.answer
}

function totalOf(row: StudyOutcome): number {
  return row.counted.kind === 'count' ? row.counted.total : 0
}

/** From the lowest lower end to the highest upper end. */
function reachOf(found: readonly PublishedCount[]): Interval {
  return {
    low: Math.min(...found.map(({ exact }) => exact.low)),
    high: Math.max(...found.map(({ exact }) => exact.high)),
  }
}
