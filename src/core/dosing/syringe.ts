import { Decimal, Quantity } from '#core/units/quantity.ts'

/** One syringe of the drawer: up to `holds` mL, marked every `mark` mL. */
export type Syringe = { readonly holds: string; readonly mark: string }

/**
 * Usual graduations, smallest syringe first. House policy may replace the list.
 * Standard syringe markings, remembered (confidence high); the data sheet of the syringe in hand comes first.
 */
export const usualSyringes: readonly Syringe[] = [
  { holds: '1', mark: '0.01' },
  { holds: '3', mark: '0.1' },
  { holds: '5', mark: '0.2' },
  { holds: '10', mark: '0.5' },
  { holds: '20', mark: '1' },
  { holds: '60', mark: '1' },
]

/** Below this a volume is not drawn undiluted: a weaker dilution is offered (house judgement). */
export const smallestDrawable = new Quantity(new Decimal('0.05'), 'mL')

/**
 * A volume rounded to the graduation of the smallest syringe that holds it.
 * At a ceiling the rounding goes down, so that rounding never lifts a dose over its limit.
 * More than the largest syringe holds is rounded to that syringe's mark.
 *
 * @example drawnFrom(quantity('1.64', 'mL')) // 1.6 mL, a 3 mL syringe
 */
export function drawnFrom(
  volume: Quantity<'mL'>,
  options: { readonly syringes?: readonly Syringe[]; readonly down?: boolean } = {},
): Quantity<'mL'> {
  const syringes = options.syringes ?? usualSyringes
  const syringe = syringes.find((s) => volume.value.lte(s.holds)) ?? syringes.at(-1)
  if (!syringe) throw new Error('There must be at least one syringe.')
  const marks = volume.value.div(syringe.mark)
  const whole = options.down ? marks.floor() : marks.toDecimalPlaces(0, Decimal.ROUND_HALF_UP)
  return new Quantity(whole.times(syringe.mark), 'mL')
}
