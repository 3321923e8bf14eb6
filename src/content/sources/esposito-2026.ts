import type { Source } from '#core/evidence/sourced.ts'

export const esposito2026 = {
  id: 'esposito-2026',
  citation:
    'Esposito F et al. T-shape versus circular shape: a retrospective evaluation of intraoperative and postoperative complications in a cohort of 142 dogs undergoing TECA-LBO for end-stage otitis. J Small Anim Pract 2026 (online 2025). doi:10.1111/jsap.70030',
  seenAt: 'abstract at synapsesocial.com and m.booksci.cn',
  strength: 'study',
} as const satisfies Source
