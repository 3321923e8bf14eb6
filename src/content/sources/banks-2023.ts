import type { Source } from '#core/evidence/sourced.ts'

export const banks2023 = {
  id: 'banks-2023',
  citation: 'Banks C et al. Vet Surg 2023;52(5)',
  seenAt: 'abstract on a topic page of discovery.researcher.life; citation at petcasefinder.com',
  strength: 'study',
} as const satisfies Source
