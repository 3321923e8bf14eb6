import type { FormWords } from '#core/forms/words.ts'

export const reportFrozen = {
  kind: 'report-frozen',
  purpose: 'The results of a year, frozen as they stood on one day.',
  sections: { report: 'Report' },
  fields: {
    year: { label: 'Year of the operations' },
    lookedAt: { label: 'Looked at on' },
    readUntil: { label: 'Journal read up to entry' },
    rows: { label: 'Operated ears' },
    dataHash: {
      label: 'SHA-256 of the data',
      wrong: 'Sixty-four digits and letters from a to f, as the page of the years gives them.',
    },
    reportHash: {
      label: 'SHA-256 of the report',
      wrong: 'Sixty-four digits and letters from a to f, as the page of the years gives them.',
    },
    method: { label: 'Method, version' },
    program: { label: 'Program, version', none: 'not told' },
    clinic: { label: 'Clinic' },
    by: { label: 'Frozen by' },
    decided: { label: 'To be done otherwise next year', add: 'Add another', item: 'Change {number}' },
  },
} as const satisfies FormWords
