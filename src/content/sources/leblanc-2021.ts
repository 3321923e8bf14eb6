import type { Source } from '#core/evidence/sourced.ts'

export const leblanc2021 = {
  id: 'leblanc-2021',
  citation:
    'LeBlanc AK et al. VCOG-CTCAE v2: common terminology criteria for adverse events following investigational therapy in dogs and cats. Vet Comp Oncol 2021;19(2):311–352. doi:10.1111/vco.12677 (free to read)',
  seenAt: 'abstract; the general rule of the five grades in a copy of version 1.1',
  strength: 'guideline',
} as const satisfies Source
