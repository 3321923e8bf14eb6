import type { FormArrangement } from '#core/forms/arrangement.ts'

/** Written from the page of the years, beside the numbers of then and now; never typed and never amended. */
export const reportErratum = {
  kind: 'report-erratum',
  place: 'clinic',
  chapters: [],
  writtenBy: ['surgeon'],
  amendable: false,
  sections: [{ id: 'erratum', fields: ['report', 'year', 'readUntil', 'numbers', 'text', 'because', 'entries', 'by'] }],
} as const satisfies FormArrangement
