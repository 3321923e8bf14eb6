import type { Source } from '#core/evidence/sourced.ts'

export const angell2025Recover2024Summary = {
  id: 'angell-2025-recover-2024-summary',
  citation: 'Angell Animal Medical Center 2025, summary of the RECOVER 2024 advanced life support guidelines',
  seenAt: 'mspca.org page',
  strength: 'web',
} as const satisfies Source
