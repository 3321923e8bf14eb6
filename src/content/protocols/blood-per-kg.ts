import type { Species } from '#core/animal/species.ts'
import type { Sourced } from '#core/evidence/sourced.ts'
import type { BloodPerKg } from '#core/theatre/blood-volume.ts'
import { quantity } from '#core/units/quantity.ts'

const read = { known: 'read', strength: 'web', confidence: 'high', checked: '2026-11-25' } as const

/** Circulating blood per kilogram. Ranges: the shock volumes of the 2013 guidelines, and for the cat figures to 66. */
export const bloodPerKg = {
  dog: {
    value: { counted: quantity('90', 'mL/kg'), low: quantity('80', 'mL/kg'), high: quantity('90', 'mL/kg') },
    sources: ['vetprep-transfusion', 'clinicians-brief-fluids', 'aaha-aafp-2013-fluids'],
    where: '90 counted with, 80–90 quoted',
    ...read,
  },
  cat: {
    value: { counted: quantity('60', 'mL/kg'), low: quantity('50', 'mL/kg'), high: quantity('66', 'mL/kg') },
    sources: ['clinicians-brief-fluids', 'aaha-aafp-2013-fluids'],
    where: '60 counted with, 50–66 quoted',
    ...read,
  },
} as const satisfies Readonly<Record<Species, Sourced<BloodPerKg>>>
