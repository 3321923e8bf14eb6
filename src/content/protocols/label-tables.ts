import type { LabelTable } from '#core/dosing/rules.ts'
import { quantity } from '#core/units/quantity.ts'
import { labelBands } from './label-bands.ts'

const scheme = {
  drug: 'meloxicam',
  species: 'dog',
  use: 'nsaid',
  qualifier: 'from day 2',
  divides: 'halves',
  dose: quantity('0.1', 'mg/kg'),
  every: quantity('24', 'h'),
  most: quantity('0.15', 'mg/kg'),
  sources: ['meloxicam-chewable-uk-spc'],
  where: 'dose scheme, maintenance: its bands give up to 0.15 mg/kg',
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-29',
} as const

/** Tablets whose label is a table of weights. */
export const labelTables = [
  { size: quantity('1', 'mg'), bands: labelBands['meloxicam 1 mg'], ...scheme },
  { size: quantity('2.5', 'mg'), bands: labelBands['meloxicam 2.5 mg'], ...scheme },
] as const satisfies readonly LabelTable[]
