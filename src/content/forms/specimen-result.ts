import type { FormArrangement } from '#core/forms/arrangement.ts'

/** What the laboratory wrote, raw. */
export const specimenResult = {
  kind: 'specimen-result',
  place: 'case',
  chapters: ['Work-up', 'Home', 'Year'],
  writtenBy: ['nurse', 'desk', 'surgeon'],
  amendable: true,
  sections: [
    { id: 'report', fields: ['specimen', 'status', 'growth'] },
    { id: 'isolates', fields: ['isolates'] },
    { id: 'words', fields: ['text'] },
  ],
  fields: { specimen: { entries: ['specimen'] }, isolates: { shownWhen: { field: 'growth', is: ['growth'] } } },
} as const satisfies FormArrangement
