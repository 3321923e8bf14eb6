import type { Source } from '#core/evidence/sourced.ts'

export const steiner2000 = {
  id: 'steiner-2000',
  citation:
    'Steiner, Cook, Farewell & Treasure, Monitoring surgical performance using risk-adjusted cumulative sum charts. Biostatistics 2000;1:441–452',
  seenAt: 'the abstract; the formula is remembered and agrees with a printed score of a program for such charts',
  strength: 'study',
} as const satisfies Source
