import { procedureIds } from '../animal/procedure.ts'
import type { Species } from '../animal/species.ts'
import { checkCount } from '../stats/proportion-interval.ts'
import type { OutcomeCode } from './outcome-code.ts'
import type { Confidence, Day, Known, Provenance, SourceId, Strength } from './sourced.ts'

/**
 * What was done to those counted: our procedures by their own ids, and finer ones beside them,
 * because different operations never mix.
 */
export const studyProcedures = [
  ...procedureIds,
  'teca-vbo',
  'teca-alone',
  'teca-lbo-and-vbo',
  'teca-lbo-experimental',
  'vbo-experimental',
  'vbo-after-teca-lbo',
  'antibiotics-after-teca-lbo',
  'cholesteatoma-surgery',
  'cholesteatoma-endoscopic-clearing',
  'lateral-resection-or-excision',
  'lateral-resection-for-tumour',
  'traction-endoscopic',
  'traction-lateral',
] as const
export type StudyProcedure = (typeof studyProcedures)[number]

/** `procedure` is one operation: a single session on both ears counts once. */
export const countUnits = ['animal', 'ear', 'procedure'] as const
export type CountUnit = (typeof countUnits)[number]

/** Where the count came from; `derived` is a sum or difference of printed counts. */
export type CountBasis =
  | 'stated'
  | 'from-percent'
  | 'derived'
  | 'reconstructed'
  | 'interpreted'
  | 'percent-only'
  | 'memory'

/** Why a row does not stand among the usable counts. */
export type AsideReason =
  | 'subgroup'
  | 'mixed-species'
  | 'mixed-procedures'
  | 'other-procedure'
  | 'other-unit'
  | 'overlap'
  | 'remembered'
  | 'second-hand'
  | 'two-readings'
  | 'interpreted'
  | 'reconstructed'
  | 'percent-only'
  | 'experimental'
  | 'chosen-cases'

export type PoolUse =
  | { readonly use: 'primary' }
  | { readonly use: 'sensitivity' | 'no'; readonly because: AsideReason }

export type FollowUp = { readonly kind: 'stated'; readonly text: string } | { readonly kind: 'not-stated' }
export type Counted =
  | { readonly kind: 'count'; readonly events: number; readonly total: number }
  | { readonly kind: 'percent-only'; readonly printed: string }

/** One outcome in one group of one study: a sourced fact. */
export type StudyOutcome = Provenance & {
  readonly study: string
  readonly species: Species | 'mixed'
  readonly procedure: StudyProcedure
  /** Other procedures under which this row is worth showing aside, because some of those counted had them. */
  readonly touches: readonly StudyProcedure[]
  readonly unit: CountUnit
  /** How many animals those ears or operations came from, when known. */
  readonly animals?: number
  readonly outcome: OutcomeCode
  readonly counted: Counted
  readonly basis: CountBasis
  readonly pool: PoolUse
  readonly followed: FollowUp
  readonly subgroup?: string
  /** Set when one printed sentence can be read in more than one way; each reading is a row. */
  readonly reading?: string
  readonly remark?: string
  /** A contradiction inside the publication, kept as printed. */
  readonly printed?: string
}

export type StudyDesign = 'retrospective' | 'prospective' | 'experimental' | 'unknown'

/** Another study that may have counted some of the same animals. */
export type Overlap = { readonly study: string; readonly likelihood: 'probable' | 'possible'; readonly because: string }

export type Study = {
  readonly id: string
  /** content/sources holds the citation. */
  readonly source: SourceId
  readonly year: number
  readonly doi?: string
  readonly design: StudyDesign
  readonly overlaps: readonly Overlap[]
  readonly remark?: string
  readonly rows: readonly StudyOutcome[]
}

type RowText = {
  readonly pool?: PoolUse
  readonly followed?: string
  readonly subgroup?: string
  readonly remark?: string
}
type SeriesOutcome = RowText & {
  readonly outcome: OutcomeCode
  readonly basis: CountBasis
  readonly confidence: Confidence
  readonly known?: Known
  /** When the row rests on more, or on something else, than the study's own page. */
  readonly sources?: readonly SourceId[]
  readonly where?: string
  readonly reading?: string
  readonly printed?: string
} & ({ readonly events: number; readonly total: number } | { readonly percent: string })

export type Series = RowText & {
  readonly species: Species | 'mixed'
  readonly procedure: StudyProcedure
  readonly touches?: readonly StudyProcedure[]
  readonly unit: CountUnit
  readonly animals?: number
  readonly outcomes: readonly SeriesOutcome[]
}

export type StudyFacts = Omit<Study, 'rows' | 'source' | 'overlaps'> & {
  readonly overlaps?: readonly Overlap[]
  /** Where and how the figures were seen; a row may say otherwise. */
  readonly seen: {
    readonly where: string
    readonly known: Known
    readonly strength: Strength
    readonly checked: Day
  }
  readonly series: readonly Series[]
}

/**
 * Writes out one published study: every row complete with its own provenance, every count possible.
 * A count that cannot be, or a row that may not be pooled and yet says so, is a bug in content and is thrown.
 *
 * @example study({ id: 'fox-2008', year: 2008, design: 'retrospective', seen: {…}, series: [{ species: 'dog', … }] })
 */
export function study({ seen, series, overlaps = [], ...facts }: StudyFacts): Study {
  const rows = series.flatMap((one) => one.outcomes.map((row) => completed(facts.id, seen, one, row)))
  for (const row of rows) checkRow(row)
  checkPrimariesAreUnique(rows)
  return { ...facts, source: facts.id, overlaps, rows }
}

function completed(id: string, seen: StudyFacts['seen'], series: Series, row: SeriesOutcome): StudyOutcome {
  const { outcomes: _, followed: seriesFollowed, remark: seriesRemark, touches = [], ...shared } = series
  const { followed = seriesFollowed, remark, ...own } = row
  const { events, total, percent, ...text } = { events: undefined, total: undefined, percent: undefined, ...own }
  const remarks = [seriesRemark, remark].filter((part) => part !== undefined)
  return {
    pool: { use: 'primary' },
    ...seen,
    sources: [id],
    ...shared,
    ...text,
    ...(remarks.length === 0 ? {} : { remark: remarks.join(' ') }),
    study: id,
    touches,
    counted: percent === undefined ? { kind: 'count', events, total } : { kind: 'percent-only', printed: percent },
    followed: followed === undefined ? { kind: 'not-stated' } : { kind: 'stated', text: followed },
  }
}

function checkRow(row: StudyOutcome): void {
  const name = `${row.study}, ${row.outcome}`
  if (row.counted.kind === 'count') {
    checkCount(row.counted)
    if (row.counted.total === 0) throw new Error(`${name}: nothing was counted.`)
  }
  if (row.pool.use !== 'primary') return
  if (row.species === 'mixed') throw new Error(`${name}: dogs and cats together are never a primary row.`)
  if (row.subgroup !== undefined) throw new Error(`${name}: a subgroup is never a primary row.`)
  if (row.reading !== undefined) throw new Error(`${name}: one of two readings is never a primary row.`)
  if (row.counted.kind !== 'count') throw new Error(`${name}: a percentage without its count is never a primary row.`)
  if (row.known !== 'read') throw new Error(`${name}: only a figure that was read is a primary row.`)
}

function checkPrimariesAreUnique(rows: readonly StudyOutcome[]): void {
  const seen = new Set<string>()
  for (const row of rows.filter(({ pool }) => pool.use === 'primary')) {
    const key = [row.study, row.species, row.procedure, row.unit, row.outcome].join(' ')
    if (seen.has(key)) throw new Error(`${key} is counted twice.`)
    seen.add(key)
  }
}
