import type { Source } from '#core/evidence/sourced.ts'

export const fastingOlderAdvice2017 = {
  id: 'fasting-older-advice-2017',
  citation: 'Small Animal Talk, 2017: fasting overnight before anaesthesia',
  seenAt: 'smallanimaltalk.com',
  strength: 'web',
} as const satisfies Source
