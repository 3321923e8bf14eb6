/** What must be the same in every row of a report: whose it is and what it was taken from. */
export const columnsOfReport = [
  'laboratory',
  'accession',
  'label',
  'animal',
  'owner',
  'chip',
  'species',
  'born',
  'collected',
  'reported',
  'site',
  'side',
  'status',
  'standard',
  'edition',
] as const

/** What a column of a laboratory's table says. */
export const columnMeanings = [
  ...columnsOfReport,
  'organism',
  'isolate',
  'amount',
  'drug',
  'method',
  'sign',
  'value',
  'unit',
  'category',
  'disk',
  'comment',
  /** Of a wide table: the drug whose values, or whose categories, stand under it. */
  'drug-values',
  'drug-categories',
  /** Nobody needs it; kept with the original. */
  'nothing',
] as const
export type ColumnMeaning = (typeof columnMeanings)[number]

export const delimiters = [',', ';', '\t', '|'] as const
export type Delimiter = (typeof delimiters)[number]

export type Column = {
  /** Its heading as printed. */
  readonly heading: string
  readonly means: ColumnMeaning
  /** Of a wide table: the drug, and what its bare numbers are where the heading says it. */
  readonly drug: string | null
  readonly unit: 'mg/L' | 'mm' | null
}

/** How the tables of one laboratory are read: remembered, and changed by a person only. */
export type TableMapping = {
  readonly columns: readonly Column[]
  readonly delimiter: Delimiter
  /** Which number of `03/04/2026` is the day; null: its dates are written so that they can be read in one way only. */
  readonly dates: 'day-first' | 'month-first' | null
  /** What a bare number is, as this laboratory said; null: it is asked each time. */
  readonly unit: 'mg/L' | 'mm' | null
  /** What `1,000` is; null: it is asked. */
  readonly comma: 'decimal' | 'thousands' | null
}
