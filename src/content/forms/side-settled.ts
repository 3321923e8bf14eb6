import type { FormArrangement } from '#core/forms/arrangement.ts'

/** Which ear it is, and which sources are wrong. */
export const sideSettled = {
  kind: 'side-settled',
  place: 'case',
  chapters: ['Agreement', 'Theatre'],
  writtenBy: ['surgeon'],
  amendable: true,
  sections: [{ id: 'side', fields: ['side', 'overruled', 'because'] }],
  fields: { overruled: { entries: ['referral', 'ear-findings', 'imaging', 'photograph', 'paper'] } },
} as const satisfies FormArrangement
