/** What an operation of an ear was done for, in one word. A surgeon says it with the summary; nothing works it out. */
export const mainReasons = [
  'chronic-otitis',
  'middle-ear',
  'tumour',
  'polyp',
  'cholesteatoma',
  'abscess-or-tract',
  'earlier-operation',
  'injury-or-malformation',
  'other',
] as const
export type MainReason = (typeof mainReasons)[number]

/** Where nobody said it, that is a group of its own and is never shared out among the others. */
export const reasonGroups = [...mainReasons, 'not-recorded'] as const
export type ReasonGroup = (typeof reasonGroups)[number]
