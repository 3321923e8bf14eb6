import type { Source } from '#core/evidence/sourced.ts'

export const fox2008 = {
  id: 'fox-2008',
  citation:
    'Fox E et al. Risk factors for complications in dogs undergoing TECA/LBO: 309 dogs. BSAVA Congress 2008 (conference abstract; no full paper found)',
  seenAt: 'congress abstract at vin.com',
  strength: 'study',
} as const satisfies Source
