import type { TabletBand } from '#core/dosing/calc/operation.ts'
import type { Provenance, Sourced } from '#core/evidence/sourced.ts'

const scheme = {
  sources: ['meloxicam-chewable-uk-spc'],
  strength: 'label',
  checked: '2026-11-25',
} as const satisfies Partial<Provenance>

/** The half-tablet band and its upper end were read: it gives less than 0.1 mg/kg at 7 kg, as printed. */
const read = { ...scheme, known: 'read', confidence: 'high', where: 'dose scheme; lower end remembered' } as const

/** Ends remembered from the same scheme; the published weights 9, 18, 23 and 45 kg fall where they should. */
const remembered = {
  ...scheme,
  known: 'remembered',
  confidence: 'medium',
  where: 'dose scheme; ends of the band remembered',
} as const

/** Weight bands that a label prints for its own tablets; maintenance dose, both ends included. */
export const labelBands = {
  'meloxicam 1 mg': [
    { value: { fromKg: '4.0', toKg: '7.0', tablets: '0.5' }, ...read },
    { value: { fromKg: '7.1', toKg: '10.0', tablets: '1' }, ...remembered },
    { value: { fromKg: '10.1', toKg: '15.0', tablets: '1.5' }, ...remembered },
    { value: { fromKg: '15.1', toKg: '20.0', tablets: '2' }, ...remembered },
  ],
  'meloxicam 2.5 mg': [
    { value: { fromKg: '20.1', toKg: '25.0', tablets: '1' }, ...remembered },
    { value: { fromKg: '25.1', toKg: '35.0', tablets: '1.5' }, ...remembered },
    { value: { fromKg: '35.1', toKg: '50.0', tablets: '2' }, ...remembered },
  ],
} as const satisfies Readonly<Record<string, readonly Sourced<TabletBand>[]>>
