import type { Source } from '#core/evidence/sourced.ts'

export const amrFirstIsolate2025 = {
  id: 'amr-first-isolate-2025',
  citation:
    'Documentation of first_isolate in the R package AMR 3.0.0 (June 2025), which puts the methods of Hindler & Stelling into practice',
  strength: 'web',
} as const satisfies Source
