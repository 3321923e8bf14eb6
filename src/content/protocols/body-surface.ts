import type { Species } from '#core/animal/species.ts'
import type { Sourced } from '#core/evidence/sourced.ts'
import { Decimal } from '#core/units/quantity.ts'

/** k of Meeh's form, m² = k × kg^(2/3). */
export const bodySurface = {
  dog: {
    value: new Decimal('0.101'),
    sources: ['meeh-dog-k'],
    where: 'K 10.1',
    known: 'read',
    strength: 'web',
    confidence: 'high',
    checked: '2026-11-25',
  },
  // One web source prints 10.4 for the cat; 10.0 is the figure of the oncology tables.
  cat: {
    value: new Decimal('0.100'),
    sources: ['oncology-bsa-tables'],
    where: 'K 10.0; one web source prints 10.4',
    known: 'remembered',
    strength: 'textbook',
    confidence: 'medium',
    checked: '2026-11-25',
  },
} as const satisfies Readonly<Record<Species, Sourced<Decimal>>>
