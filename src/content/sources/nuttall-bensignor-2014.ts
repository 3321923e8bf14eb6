import type { Source } from '#core/evidence/sourced.ts'

export const nuttallBensignor2014 = {
  id: 'nuttall-bensignor-2014',
  citation:
    'Nuttall T, Bensignor E. A pilot study to develop an objective clinical score for canine otitis externa. Vet Dermatol 2014;25:530-e92. doi:10.1111/vde.12163',
  seenAt: 'abstract at litmetric.com, and in German at vetcontact.com',
  strength: 'study',
} as const satisfies Source
