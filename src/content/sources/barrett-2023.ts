import type { Source } from '#core/evidence/sourced.ts'

export const barrett2023 = {
  id: 'barrett-2023',
  citation:
    'Barrett FM et al. Comparison of two postoperative complication grading systems after treatment of stifle and shoulder instability in 68 dogs. Vet Surg 2023;52(1):98–105. doi:10.1111/vsu.13893',
  seenAt: 'abstract, on pages that quote it',
  strength: 'study',
} as const satisfies Source
