import type { Temporal } from 'temporal-polyfill'
import { Decimal, Quantity } from '#core/units/quantity.ts'

/** Hours from one instant to another, exactly; negative when the second comes first. */
export function hoursBetween(from: Temporal.Instant, to: Temporal.Instant): Quantity<'h'> {
  return new Quantity(new Decimal(to.epochMilliseconds).minus(from.epochMilliseconds).div(3_600_000), 'h')
}

/**
 * Whether something given still counts at this moment. Without a time it counts in full; nobody is given
 * the benefit of an unknown clock. Something written down for the future counts too.
 */
export function stillCounts(
  given: Temporal.Instant | undefined,
  at: Temporal.Instant | undefined,
  window: Quantity<'h'>,
): boolean {
  if (!given || !at) return true
  return hoursBetween(given, at).value.lt(window.value)
}
