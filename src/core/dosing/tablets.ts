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

/** Where the label of this tablet rounds: as said with it, else as the formulary knows this size, else unknown. */
export function roundsOf(tablet: Tablet, row: DoseRow): 'up' | 'down' | undefined {
  return tablet.rounds ?? row.tablets?.value.find((entry) => entry.strength.value.eq(tablet.strength.value))?.rounds
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
 * The number of tablets in pieces the product allows. A label that rounds one way is followed. Where its way is not
 * known, fewer are counted as long as they stay inside the row's range, more only where fewer would not (so an
 * antibiotic is not rounded under its lowest dose); over the ceiling there is no count at all.
 *
 * @example countTablets(quantity('41', 'mg'), quantity('50', 'mg'), 'halves', band) // 1 tablet, where 25 mg were too little
 */
export function countTablets(
  amount: Quantity<'mg'>,
  strength: Quantity<'mg'>,
  divides: Divides,
  band: TabletBand,
): TabletCount {
  const piece = pieceOf(divides)
  const pieces = amount.value.div(strength.value).div(piece)
  const ways = { up: [pieces.ceil()], down: [pieces.floor()] }
  const counts = (band.rounds ? ways[band.rounds] : [...ways.down, ...ways.up])
    .map((count) => count.times(piece))
    .filter((count) => count.gt(0))
    .filter((count) => !band.ceiling || count.times(strength.value).lte(band.ceiling.value))
  const [fewest] = counts
  if (!fewest) return { kind: 'none' }
  const isInside = (count: Decimal) => {
    const mass = count.times(strength.value)
    return mass.gte(band.low.value) && mass.lte(band.high.value)
  }
  // Somebody who planned less than the range is not lifted into it.
  const chosen = (amount.value.lt(band.low.value) ? undefined : counts.find(isInside)) ?? fewest
  return { kind: isInside(chosen) ? 'fits' : 'rounded', count: new Quantity(chosen, '{tablet}') }
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
