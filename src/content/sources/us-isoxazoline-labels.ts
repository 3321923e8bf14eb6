import type { Source } from '#core/evidence/sourced.ts'

export const usIsoxazolineLabels = {
  id: 'us-isoxazoline-labels',
  citation: 'US labels of afoxolaner and sarolaner by mouth (no page named)',
  strength: 'label',
} as const satisfies Source
