import type { FormArrangement } from '#core/forms/arrangement.ts'

/** Written from the page of the years, where the data is frozen; never typed and never amended. */
export const reportFrozen = {
  kind: 'report-frozen',
  place: 'clinic',
  chapters: [],
  writtenBy: ['surgeon'],
  amendable: false,
  sections: [
    {
      id: 'report',
      fields: [
        'year',
        'lookedAt',
        'readUntil',
        'rows',
        'dataHash',
        'reportHash',
        'method',
        'program',
        'clinic',
        'by',
        'decided',
      ],
    },
  ],
} as const satisfies FormArrangement
