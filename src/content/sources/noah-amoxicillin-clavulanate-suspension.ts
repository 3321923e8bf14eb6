import type { Source } from '#core/evidence/sourced.ts'

export const noahAmoxicillinClavulanateSuspension = {
  id: 'noah-amoxicillin-clavulanate-suspension',
  citation: 'NOAH Compendium data sheet, amoxicillin/clavulanic acid oral suspension',
  seenAt: 'noahcompendium.co.uk id -458473',
  strength: 'label',
} as const satisfies Source
