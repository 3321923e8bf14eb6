import type { Source } from '#core/evidence/sourced.ts'

export const stateLaboratoryAntibiogram2019 = {
  id: 'state-laboratory-antibiogram-2019',
  citation: 'Companion-animal antibiogram page of a state veterinary diagnostic laboratory in the United States, 2019',
  strength: 'web',
} as const satisfies Source
