import type { Sourced } from '#core/evidence/sourced.ts'
import { answer, never, type Outcome, refuse } from '#core/outcome/outcome.ts'
import { Decimal, Quantity, scale } from '#core/units/quantity.ts'

export type SwabKind = 'gauze-10-cm' | 'lap-sponge'

/** Swabs of one bowl: weighed dry and wet, or only counted. */
export type Swabs =
  | {
      readonly kind: 'weighed'
      readonly dry: Quantity<'g'>
      readonly wet: Quantity<'g'>
      /** Saline that was put on them. */
      readonly saline: Quantity<'mL'>
    }
  | { readonly kind: 'counted'; readonly swab: SwabKind; readonly soaked: number }

export type SwabFacts = {
  /** Grams of blood in one millilitre. */
  readonly density: Sourced<string>
  readonly soaked: Readonly<Record<SwabKind, Sourced<{ readonly low: Quantity<'mL'>; readonly high: Quantity<'mL'> }>>>
}

export type SwabRefusal =
  | { readonly because: 'wet-below-dry'; readonly dry: Quantity<'g'>; readonly wet: Quantity<'g'> }
  | { readonly because: 'saline-above-weight'; readonly result: Quantity<'mL'> }
  | { readonly because: 'count-not-whole'; readonly count: number }

export type VolumeSpan = { readonly low: Quantity<'mL'>; readonly high: Quantity<'mL'> }

/**
 * Blood in swabs: (wet − dry) ÷ density − saline when weighed, an estimated span when only counted.
 * A negative result is refused, because a weight was read wrongly or the saline is not all there.
 *
 * @example bloodInSwabs({ kind: 'weighed', dry: 10 g, wet: 34 g, saline: 4 mL }, facts) // 20 mL
 */
export function bloodInSwabs(swabs: Swabs, facts: SwabFacts): Outcome<VolumeSpan, SwabRefusal> {
  switch (swabs.kind) {
    case 'weighed': {
      const { dry, wet, saline } = swabs
      if (wet.value.lt(dry.value)) return refuse({ because: 'wet-below-dry', dry, wet })
      const fluid = wet.value.minus(dry.value).div(facts.density.value)
      const blood = new Quantity(fluid.minus(saline.value), 'mL')
      if (blood.value.lt(0)) return refuse({ because: 'saline-above-weight', result: blood })
      return answer({ low: blood, high: blood })
    }
    case 'counted': {
      const { soaked, swab } = swabs
      if (!Number.isInteger(soaked) || soaked < 0) return refuse({ because: 'count-not-whole', count: soaked })
      const each = facts.soaked[swab].value
      const count = new Decimal(soaked)
      return answer({ low: scale(each.low, count), high: scale(each.high, count) })
    }
    default:
      return never(swabs)
  }
}
