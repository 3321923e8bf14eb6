import type { Source } from '#core/evidence/sourced.ts'

export const marbofloxacinUkSpc = {
  id: 'marbofloxacin-uk-spc',
  citation: 'UK/EU label of marbofloxacin tablets',
  seenAt: 'public reprint',
  strength: 'label',
} as const satisfies Source
