import type { Source } from '#core/evidence/sourced.ts'

export const kazamaIkeda1988 = {
  id: 'kazama-ikeda-1988',
  citation: 'Kazama T, Ikeda K. 1988 (sevoflurane MAC in dogs)',
  strength: 'study',
} as const satisfies Source
