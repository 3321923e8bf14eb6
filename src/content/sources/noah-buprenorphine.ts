import type { Source } from '#core/evidence/sourced.ts'

export const noahBuprenorphine = {
  id: 'noah-buprenorphine',
  citation: 'NOAH Compendium data sheet, buprenorphine 0.3 mg/mL',
  seenAt: 'noahcompendium.co.uk id -449038',
  strength: 'label',
} as const satisfies Source
