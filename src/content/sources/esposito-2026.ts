import type { Source } from '#core/evidence/sourced.ts'

export const esposito2026 = {
  id: 'esposito-2026',
  citation: 'Esposito F et al. J Small Anim Pract 2026 (online 2025). doi:10.1111/jsap.70030',
  seenAt: 'abstract at synapsesocial.com and m.booksci.cn',
  strength: 'study',
} as const satisfies Source
