import type { Source } from '#core/evidence/sourced.ts'

export const bsavaSedationProtocols = {
  id: 'bsava-sedation-protocols',
  citation: 'BSAVA Library, canine and feline sedation and immobilisation protocols (back matter)',
  seenAt: 'bsavalibrary.com',
  strength: 'textbook',
} as const satisfies Source
