import type { Divides, DoseRow, Interval } from '#core/formulary/drug.ts'
import { never } from '#core/outcome/outcome.ts'
import { Decimal, Quantity } from '#core/units/quantity.ts'
import type { Tablet } from './plan.ts'

/** The smallest piece that a tablet is known to break into. Unknown means: not at all. */
function pieceOf(divides: Divides): Decimal {
  switch (divides) {
    case 'whole':
    case 'unknown':
      return new Decimal(1)
    case 'halves':
      return new Decimal('0.5')
    case 'quarters':
      return new Decimal('0.25')
    default:
      return never(divides)
  }
}

/** How the tablet in hand divides: as said with it, else as the formulary knows this size, else unknown. */
export function dividesOf(tablet: Tablet, row: DoseRow): Divides {
  if (tablet.divides) return tablet.divides
  const product = row.tablets?.value.find((entry) => entry.strength.value.eq(tablet.strength.value))
  return product?.divides ?? 'unknown'
}

/** Where the label of this size rounds, when it says so. */
export function roundsOf(tablet: Tablet, row: DoseRow): 'up' | 'down' | undefined {
  return row.tablets?.value.find((entry) => entry.strength.value.eq(tablet.strength.value))?.rounds
}

/** From least to most milligrams a rounded dose may give. */
export type TabletBand = {
  readonly low: Quantity<'mg'>
  readonly high: Quantity<'mg'>
  readonly ceiling?: Quantity<'mg'>
  readonly rounds?: 'up' | 'down' | undefined
}

export type TabletCount =
  | { readonly kind: 'fits'; readonly count: Quantity<'{tablet}'> }
  | { readonly kind: 'rounded'; readonly count: Quantity<'{tablet}'> }
  | { readonly kind: 'none' }

/**
 * The nearest number of tablets in pieces the product allows. A count inside the row's range is preferred
 * (so an antibiotic is not rounded under its lowest dose); a label that rounds one way is followed; over the ceiling
 * there is no count at all.
 *
 * @example countTablets(quantity('41', 'mg'), quantity('50', 'mg'), 'halves', band) // 1 tablet
 */
export function countTablets(
  amount: Quantity<'mg'>,
  strength: Quantity<'mg'>,
  divides: Divides,
  band: TabletBand,
): TabletCount {
  const piece = pieceOf(divides)
  const pieces = amount.value.div(strength.value).div(piece)
  const counts = (
    band.rounds === 'up' ? [pieces.ceil()] : band.rounds === 'down' ? [pieces.floor()] : [pieces.floor(), pieces.ceil()]
  )
    .map((count) => count.times(piece))
    .filter((count) => count.gt(0))
    .filter((count) => !band.ceiling || count.times(strength.value).lte(band.ceiling.value))
    .sort((a, b) => distance(a, amount, strength).comparedTo(distance(b, amount, strength)))
  const inBand = counts.find((count) => {
    const mass = count.times(strength.value)
    return mass.gte(band.low.value) && mass.lte(band.high.value)
  })
  if (inBand) return { kind: 'fits', count: new Quantity(inBand, '{tablet}') }
  const [nearest] = counts
  return nearest ? { kind: 'rounded', count: new Quantity(nearest, '{tablet}') } : { kind: 'none' }
}

function distance(count: Decimal, amount: Quantity<'mg'>, strength: Quantity<'mg'>): Decimal {
  return count.times(strength.value).minus(amount.value).abs()
}

/** Tablets for the whole course; undefined unless the interval is one countable number of hours. */
export function courseOf(
  each: Quantity<'{tablet}'>,
  interval: Interval,
  days: number | undefined,
): Quantity<'{tablet}'> | undefined {
  const [shortest, longest] = interval.hours ?? []
  if (days === undefined || shortest === undefined || shortest !== longest) return undefined
  const doses = new Decimal(24).div(shortest).times(days).ceil()
  return new Quantity(each.value.times(doses), '{tablet}')
}
