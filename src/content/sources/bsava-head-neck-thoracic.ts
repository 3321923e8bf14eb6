import type { Source } from '#core/evidence/sourced.ts'

export const bsavaHeadNeckThoracic = {
  id: 'bsava-head-neck-thoracic',
  citation: 'BSAVA Manual of Canine and Feline Head, Neck and Thoracic Surgery, second edition',
  seenAt: 'pages 76 to 80, as quoted on copies',
  strength: 'textbook',
} as const satisfies Source
