import type { Stock } from '#core/formulary/drug.ts'
import { type AnyQuantity, convert, Quantity } from '#core/units/quantity.ts'
import { amountOf, deliveredBy } from './amount.ts'
import type { EmergencyDose, EmergencyRow, Follow, Suspicion } from './emergency-row.ts'
import { drawnFrom, type Syringe, smallestDrawable } from './syringe.ts'
import { type Dilution, heldBy, volumeOf, weakerDilution } from './volume.ts'

/** What is drawn for one row: from the bottle, or from a weaker dilution when the bottle is too strong. */
export type EmergencyLine =
  | { readonly kind: 'barred'; readonly row: EmergencyRow; readonly because: Suspicion }
  | {
      readonly kind: 'drawn'
      readonly row: EmergencyRow
      readonly amount: AnyQuantity
      /** The strength that `volume` is drawn from; null when the dose is a volume of the product. */
      readonly stock: Stock | null
      readonly volume: Quantity<'mL'>
      readonly drawn: Quantity<'mL'>
      /** What `drawn` really gives. */
      readonly delivered: AnyQuantity
      readonly dilution?: Dilution
      /** Too small to draw, and this product must not be diluted. */
      readonly tooSmall: boolean
      readonly follow?: FollowLine
    }

export type FollowLine = {
  readonly rate: Quantity<'mL/h'>
  readonly minutes?: Quantity<'min'>
  readonly total?: Quantity<'mL'>
}

/** Tenfold steps that can be made at the table: 1 mL made up to 10 mL, once, twice or three times. */
const tenfold = [10, 100, 1000] as const

/**
 * One line of the emergency sheet for a weight. A bar is printed, never silence.
 *
 * @example emergencyLine(epinephrine, quantity('4.1', 'kg'), []) // 0.41 mL of 0.1 mg/mL: 0.041 mL cannot be drawn
 */
export function emergencyLine(
  row: EmergencyRow,
  weight: Quantity<'kg'>,
  suspected: readonly Suspicion[],
  syringes?: readonly Syringe[],
): EmergencyLine {
  if (row.barredBy && suspected.includes(row.barredBy)) return { kind: 'barred', row, because: row.barredBy }
  const amount = amountFor(row.dose.value, weight)
  const exact = row.stock ? volumeOf(amount, row.stock) : convert(amount, 'mL')
  if (!exact) throw new Error(`${row.drug}: ${amount} cannot be drawn from ${row.stock ?? 'the product itself'}.`)
  const options = syringes ? { syringes } : {}
  const isSmall = exact.value.lt(smallestDrawable.value)
  const dilution = isSmall && row.stock && row.diluent ? weakerDilution(amount, row.stock, tenfold, options) : undefined
  const stock = dilution?.strength ?? row.stock
  const volume = dilution?.volume ?? exact
  const drawn = dilution?.drawn ?? drawnFrom(exact, options)
  return {
    kind: 'drawn',
    row,
    amount,
    stock,
    volume,
    drawn,
    delivered: deliveredFrom(drawn, stock, amount, row.dose.value),
    ...(dilution && { dilution }),
    tooSmall: isSmall && !dilution,
    ...(row.follow && { follow: followFor(row.follow.value, row.stock, weight) }),
  }
}

/** The amount of a dose by weight. */
function amountFor(dose: EmergencyDose, weight: Quantity<'kg'>): AnyQuantity {
  // The surface is never used: doses of the sheet are by weight.
  return amountOf(dose, { weight, surface: new Quantity(weight.value.times(0), 'm2') })
}

function deliveredFrom(
  drawn: Quantity<'mL'>,
  stock: Stock | null,
  planned: AnyQuantity,
  dose: EmergencyDose,
): AnyQuantity {
  const held = stock ? heldBy(drawn, stock, planned.unit) : drawn
  return deliveredBy(
    held as Quantity<AnyQuantity['unit']>,
    planned as Quantity<AnyQuantity['unit']>,
    dose,
  ) as AnyQuantity
}

function followFor(follow: Follow, stock: Stock | null, weight: Quantity<'kg'>): FollowLine {
  const perMinute = follow.rate.value.times(weight.value)
  const rate = new Quantity(mLPerMinute(follow, perMinute, stock).times(60), 'mL/h')
  if (!follow.minutes) return { rate }
  const total = new Quantity(rate.value.times(follow.minutes.value).div(60), 'mL')
  return { rate, minutes: follow.minutes, total }
}

function mLPerMinute(follow: Follow, perMinute: Quantity<'kg'>['value'], stock: Stock | null) {
  if (follow.rate.unit === 'mL/kg/min') return perMinute
  const volume = stock && volumeOf(new Quantity(perMinute, 'ug'), stock)
  if (!volume) throw new Error(`${follow.rate} cannot be run from ${stock ?? 'the product itself'}.`)
  return volume.value
}
