import type { Source } from '#core/evidence/sourced.ts'

export const chen2007 = {
  id: 'chen-2007',
  citation:
    'Chen HC, Sinclair MD, Dyson DH. Vet Anaesth Analg 2007;34:301 (ephedrine and dopamine in dogs under isoflurane)',
  seenAt: 'abstract',
  strength: 'study',
} as const satisfies Source
