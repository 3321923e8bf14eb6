import { ownOutcomes } from '#core/evidence/own/own-outcome.ts'
import { ownOutcomeNames } from './own-figures.ts'

/** A column of a table for another program: what stands in it, in which unit, and which values it can have. */
export type ColumnWords = {
  readonly column: string
  readonly means: string
  /** Empty where a column has no unit. */
  readonly unit: string
  readonly values: string
}

/** The head of every data dictionary. */
export const dictionaryHead = ['column', 'means', 'unit', 'values'] as const

/** Below every dictionary: what a spreadsheet does to cells, and where nothing is altered. */
export const neutralised: ColumnWords = {
  column: '(every column)',
  means:
    'A cell that begins with =, +, -, @, a tab or a carriage return has an apostrophe put in front, so that no spreadsheet runs it as a formula. That alters the cell; the lossless export is the JSON.',
  unit: '',
  values: 'UTF-8, comma, CRLF, quotes doubled (RFC 4180); decimal point; an empty cell is not known or not recorded',
}

/** Of which operation, in which animals: the same in every table. */
export const whichOperation: readonly ColumnWords[] = [
  { column: 'species', means: 'Dogs and cats are never counted together.', unit: '', values: 'dog, cat' },
  {
    column: 'procedure',
    means: 'The operation.',
    unit: '',
    values:
      'teca-lbo, ventral-bulla-osteotomy, traction, lateral-wall-resection, vertical-canal-ablation, subtotal-ablation',
  },
]

/** The de-identified ears: one row for one operated ear. */
export const columnsOfEars: readonly ColumnWords[] = [
  {
    column: 'ear',
    means: 'Number of the row. Numbers are given in the order of a salted hash and say nothing of time or name.',
    unit: '',
    values: '1, 2, 3 …',
  },
  {
    column: 'animal',
    means: 'Number of the animal: two rows with one number are ears of one animal.',
    unit: '',
    values: '1, 2, 3 …',
  },
  {
    column: 'anaesthetic',
    means: 'Number of the anaesthetic: two rows with one number were operated under one anaesthetic.',
    unit: '',
    values: '1, 2, 3 …',
  },
  ...whichOperation,
  { column: 'side', means: 'The operated side of the animal.', unit: '', values: 'LEFT, RIGHT' },
  {
    column: 'year',
    means: 'Year of the operation; withheld where too few animals of that species and operation share the year.',
    unit: 'calendar year',
    values: 'four digits, or withheld',
  },
  {
    column: 'died_after',
    means: 'From the day of the operation to the day of death, of any cause. Empty: no death is on record.',
    unit: 'days',
    values: 'whole number',
  },
  {
    column: 'followed_for',
    means: 'From the day of the operation to the last day on which somebody knew how the ear was. Empty: nobody said.',
    unit: 'days',
    values: 'whole number',
  },
  {
    column: 'tract_after',
    means:
      'From the day of the operation to the first late swelling, abscess or draining tract. Empty: none on record, which is never no.',
    unit: 'days',
    values: 'whole number',
  },
  {
    column: 'blink_lost_after',
    means: 'From the day of the operation to the first look at which the blink was weaker than before it.',
    unit: 'days',
    values: 'whole number; empty: no such look',
  },
  {
    column: 'blink_back_after',
    means: 'From the day of the operation to the look at which that blink was back.',
    unit: 'days',
    values: 'whole number; empty: no such look',
  },
  ...ownOutcomes.map(
    (outcome): ColumnWords => ({
      column: outcome,
      means: ownOutcomeNames[outcome],
      unit: '',
      values: 'yes, no; empty: not known, which is never no',
    }),
  ),
]

export const deIdentifiedWords = { withheld: 'withheld', yes: 'yes', no: 'no' } as const

/** Why rows are not given out. */
export const deIdentifyRefusals = {
  'salt-too-short':
    'The secret words are shorter than 16 characters; they could be guessed. Take longer ones and keep them.',
  'small-below-two': 'Name from how many animals a cell is large enough: a whole number of at least 2.',
} as const
