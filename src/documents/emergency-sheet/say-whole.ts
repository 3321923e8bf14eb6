import { emergencySheetWords as words } from '#content/wording/papers-emergency.ts'
import type { EmergencySheet } from '#core/dosing/emergency.ts'
import { fill } from '#core/outcome/finding.ts'
import { Decimal, plain, type Quantity } from '#core/units/quantity.ts'

/** The energy of a shock as a span, or as one figure. Example: `'16 to 40 J'`. */
export function sayEnergy(energy: Pick<EmergencySheet['energy'][number], 'low' | 'high'>): string {
  const [low, high] = [whole(energy.low), whole(energy.high)]
  return fill(low === high ? words.joulesOne : words.joules, { low, high })
}

/** Example: `'246 mL'`. */
export function wholeVolume(volume: Quantity<'mL'>): string {
  return `${whole(volume)} mL`
}

/** Whole numbers from ten upwards; one digit below, so that a kitten is not rounded away. */
export function whole({ value }: Pick<Quantity<'mL' | 'J'>, 'value'>): string {
  return plain(value.toDecimalPlaces(value.lt(10) ? 1 : 0, Decimal.ROUND_HALF_UP))
}
