import type { Species } from '#core/animal/species.ts'
import { Decimal } from '#core/units/quantity.ts'
import { maybe, oneOf, positive } from './fields.ts'
import { type CalcFacts, gives, operation } from './operation.ts'

/** Meeh: m² = k × kg^(2/3), k from content unless the caller gives one. */
function surface(x: { weight_kg: Decimal; species: Species; k: Decimal | undefined }, facts: CalcFacts): Decimal {
  const k = x.k ?? facts.bodySurface[x.species].value
  return k.times(x.weight_kg.pow(new Decimal(2).div(3)))
}

const animal = { species: oneOf('dog', 'cat'), weight_kg: positive('kg'), k: maybe(positive('m2 per kg^(2/3)')) }

export const bodySurface = {
  bsa: operation({
    fields: animal,
    formula: 'm2 = k × kg^(2/3); k 0.101 dog, 0.100 cat unless given',
    units: ['m2'],
    run: (x, facts) => gives(surface(x, facts), 'm2'),
  }),
  bsa_dose_per_kg: operation({
    fields: { ...animal, dose_ug_m2: positive('ug/m2') },
    formula: 'ug/kg = dose (ug/m2) × body surface (m2) ÷ kg, with m2 = k × kg^(2/3)',
    units: ['ug/kg'],
    run: (x, facts) => gives(x.dose_ug_m2.times(surface(x, facts)).div(x.weight_kg), 'ug/kg'),
  }),
  bsa_dose_mass: operation({
    fields: { ...animal, dose_ug_m2: positive('ug/m2') },
    formula: 'mg = dose (ug/m2) × body surface (m2) ÷ 1000, with m2 = k × kg^(2/3)',
    units: ['mg'],
    run: (x, facts) => gives(x.dose_ug_m2.times(surface(x, facts)).div(1000), 'mg'),
  }),
}
