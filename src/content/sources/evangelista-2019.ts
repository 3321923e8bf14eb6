import type { Source } from '#core/evidence/sourced.ts'

export const evangelista2019 = {
  id: 'evangelista-2019',
  citation:
    'Evangelista MC et al. Facial expressions of pain in cats: the development and validation of a Feline Grimace Scale. Sci Rep 2019;9:19128',
  strength: 'study',
} as const satisfies Source
