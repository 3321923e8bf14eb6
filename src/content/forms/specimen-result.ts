import type { FormArrangement } from '#core/forms/arrangement.ts'
import { tissueDiagnoses } from '../follow-up/tissue-diagnoses.ts'

/** What the laboratory wrote, raw. */
export const specimenResult = {
  kind: 'specimen-result',
  place: 'case',
  chapters: ['Work-up', 'Home', 'Year'],
  writtenBy: ['nurse', 'desk', 'surgeon'],
  amendable: true,
  sections: [
    { id: 'report', fields: ['specimen', 'laboratory', 'accession', 'status', 'came', 'growth', 'standard'] },
    { id: 'isolates', fields: ['isolates'] },
    { id: 'tissue', fields: ['tissue'] },
    { id: 'words', fields: ['text'] },
  ],
  fields: {
    specimen: { entries: ['specimen'] },
    laboratory: { register: 'laboratory' },
    isolates: { shownWhen: { field: 'growth', is: ['growth'] } },
    'tissue.tumour': { options: tissueDiagnoses.map(({ id }) => id) },
    tissue: { shownWhen: { field: 'growth', is: ['not-a-culture'] } },
  },
} as const satisfies FormArrangement
