import type { FormWords } from '#core/forms/words.ts'
import { columnMeaningNames } from '../laboratory.ts'

const unit = { label: 'A bare number is', none: 'asked each time', options: { 'mg/L': 'mg/L', mm: 'mm' } } as const

export const laboratoryTable = {
  kind: 'laboratory-table',
  purpose: 'How the tables of one laboratory are read.',
  sections: { table: 'Table' },
  fields: {
    laboratory: { label: 'Laboratory' },
    delimiter: {
      label: 'Between the columns',
      options: { comma: 'comma', semicolon: 'semicolon', tab: 'tab', bar: 'upright bar' },
    },
    columns: { label: 'Columns', add: 'Add a column', item: 'Column {number}' },
    'columns.heading': { label: 'Heading' },
    'columns.means': { label: 'Says', options: columnMeaningNames },
    'columns.drug': { label: 'Drug', none: 'no single drug' },
    'columns.unit': { ...unit, none: 'not said by the heading' },
    dates: {
      label: 'In dates',
      none: 'written in one way only',
      options: { 'day-first': 'the day stands first', 'month-first': 'the month stands first' },
    },
    unit,
    comma: {
      label: 'A comma before three digits',
      none: 'is asked about',
      options: { decimal: 'is a decimal comma', thousands: 'parts thousands' },
    },
  },
} as const satisfies FormWords
