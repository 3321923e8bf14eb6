import type { Source } from '#core/evidence/sourced.ts'

export const mcanulty1995Ablation = {
  id: 'mcanulty-1995-ablation',
  citation:
    'McAnulty JF et al. Vet Surg 1995;24(1):1–8 (wound healing and hearing test after experimental TECA-LBO). doi:10.1111/j.1532-950x.1995.tb01285.x',
  seenAt: 'abstract at scilit.com',
  strength: 'study',
} as const satisfies Source
