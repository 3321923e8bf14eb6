import type { Source } from '#core/evidence/sourced.ts'

export const papich2023Fluoroquinolones = {
  id: 'papich-2023-fluoroquinolones',
  citation:
    'Papich, Gunnett and Lubbers, revised canine breakpoints of enrofloxacin and marbofloxacin, American Journal of Veterinary Research 2023, doi 10.2460/ajvr.23.07.0159',
  seenAt: 'abstract',
  strength: 'study',
} as const satisfies Source
