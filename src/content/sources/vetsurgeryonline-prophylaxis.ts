import type { Source } from '#core/evidence/sourced.ts'

export const vetsurgeryonlineProphylaxis = {
  id: 'vetsurgeryonline-prophylaxis',
  citation: 'Online surgery textbook, chapter 9, prophylactic antibiotics',
  seenAt: 'vetsurgeryonline.com',
  strength: 'web',
} as const satisfies Source
