import type { FormArrangement } from '#core/forms/arrangement.ts'

/** The signed summary of the surgeon. */
export const operationSummary = {
  kind: 'operation-summary',
  place: 'case',
  chapters: ['Theatre'],
  writtenBy: ['surgeon'],
  amendable: true,
  sections: [
    { id: 'operation', fields: ['side', 'procedure', 'incisionAt', 'closedAt'] },
    { id: 'people', fields: ['surgeon', 'assistant', 'anaesthetist'] },
    { id: 'found', fields: ['mainReason', 'indication', 'findings', 'complications', 'drain'] },
    { id: 'after', fields: ['plan', 'remark', 'signedBy'] },
  ],
  fields: {
    surgeon: { register: 'person' },
    signedBy: { register: 'person' },
    assistant: { register: 'person' },
    anaesthetist: { register: 'person' },
    complications: { blank: 'none' },
    incisionAt: { now: true },
    closedAt: { now: true },
  },
} as const satisfies FormArrangement
