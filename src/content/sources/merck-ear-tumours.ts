import type { Source } from '#core/evidence/sourced.ts'

export const merckEarTumours = {
  id: 'merck-ear-tumours',
  citation: 'Merck/MSD Veterinary Manual, tumours of the ear canal',
  seenAt: 'manual page',
  strength: 'textbook',
} as const satisfies Source
