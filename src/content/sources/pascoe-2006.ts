import type { Source } from '#core/evidence/sourced.ts'

export const pascoe2006 = {
  id: 'pascoe-2006',
  citation:
    'Pascoe PJ et al. Am J Vet Res 2006;67:1491 (dopamine, dobutamine and phenylephrine in cats under isoflurane)',
  seenAt: 'abstract',
  strength: 'study',
} as const satisfies Source
