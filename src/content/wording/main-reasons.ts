import type { MainReason, ReasonGroup } from '#core/animal/main-reason.ts'

/** The main reason of an operation, where a surgeon chooses it and where results are counted by it. */
export const mainReasonNames = {
  'chronic-otitis': 'ear ruined by long inflammation',
  'middle-ear': 'disease of the middle ear, canal healthy',
  tumour: 'tumour',
  polyp: 'polyp',
  cholesteatoma: 'cholesteatoma',
  'abscess-or-tract': 'swelling, abscess or draining tract',
  'earlier-operation': 'an earlier operation of this ear failed',
  'injury-or-malformation': 'torn, crushed or closed from birth',
  other: 'another reason',
} as const satisfies Record<MainReason, string>

export const reasonGroupNames: Readonly<Record<ReasonGroup, string>> = {
  ...mainReasonNames,
  'not-recorded': 'not recorded',
}
