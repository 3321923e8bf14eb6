import type { Source } from '#core/evidence/sourced.ts'

export const fox2008 = {
  id: 'fox-2008',
  citation:
    'Fox E, Hamilton MH, Friend E, White RAS, Rutherford S, Brodbelt D, Baines SJ. Risk factors for complications in dogs undergoing TECA/LBO: a multivariate analysis of 309 dogs. BSAVA Congress 2008 (conference abstract; no full paper found)',
  seenAt: 'congress abstract at vin.com',
  strength: 'study',
} as const satisfies Source
