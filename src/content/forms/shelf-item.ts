import type { FormArrangement } from '#core/forms/arrangement.ts'

/** One product this clinic really has on its shelf. */
export const shelfItem = {
  kind: 'shelf-item',
  place: 'clinic',
  chapters: [],
  writtenBy: ['nurse', 'anaesthetist', 'manager'],
  amendable: true,
  sections: [
    { id: 'product', fields: ['item', 'drug', 'label', 'form', 'strength', 'divides'] },
    { id: 'stock', fields: ['expires', 'outSince', 'controlled'] },
  ],
  fields: { drug: { register: 'drug' } },
} as const satisfies FormArrangement
