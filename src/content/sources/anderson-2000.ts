import type { Source } from '#core/evidence/sourced.ts'

export const anderson2000 = {
  id: 'anderson-2000',
  citation:
    'Anderson DM, Robinson RK, White RAS. Management of inflammatory polyps in 37 cats. Vet Rec 2000;147(24):684–687',
  seenAt: 'abstract at veterinaryrecord.bmj.com',
  strength: 'study',
} as const satisfies Source
