import type { Source } from '#core/evidence/sourced.ts'

export const caulfield2022 = {
  id: 'caulfield-2022',
  citation: 'Caulfield et al., J Feline Med Surg Open Rep 2022;8(1) (bupivacaine overdose in a cat, lipid rescue)',
  seenAt: 'abstract, bioone.org',
  strength: 'study',
} as const satisfies Source
