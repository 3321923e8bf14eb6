import type { Source } from '#core/evidence/sourced.ts'

export const noahAtipamezole = {
  id: 'noah-atipamezole',
  citation: 'NOAH Compendium data sheet, atipamezole 5 mg/mL',
  seenAt: 'noahcompendium.co.uk id -469251',
  strength: 'label',
} as const satisfies Source
