import type { FormArrangement } from '#core/forms/arrangement.ts'

/** The animal goes home. */
export const discharge = {
  kind: 'discharge',
  place: 'case',
  chapters: ['Home'],
  writtenBy: ['nurse', 'surgeon'],
  amendable: true,
  sections: [
    { id: 'medicines', fields: ['medicines'] },
    { id: 'care', fields: ['collarUntil', 'sutures', 'food', 'rest', 'eyeCare', 'nextVisit'] },
    { id: 'taught', fields: ['taught', 'taughtBy'] },
    { id: 'carer', fields: ['carer'] },
  ],
  fields: {
    medicines: { blank: 'none' },
    'medicines.drug': { register: 'drug', free: true },
    taught: { control: 'rows', rows: 'some' },
    taughtBy: { register: 'person' },
    'carer.contact': { register: 'contact' },
  },
} as const satisfies FormArrangement
