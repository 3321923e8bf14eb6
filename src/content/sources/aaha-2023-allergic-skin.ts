import type { Source } from '#core/evidence/sourced.ts'

export const aaha2023AllergicSkin = {
  id: 'aaha-2023-allergic-skin',
  citation: '2023 AAHA guidelines on allergic skin disease, table 4',
  seenAt: 'aaha.org',
  strength: 'guideline',
} as const satisfies Source
