import type { Dose, Stock } from '#core/formulary/drug.ts'
import type { HowGiven } from '#core/journal/how-given.ts'
import { fromStored } from '#core/journal/stored.ts'
import type { How } from './plan.ts'

/**
 * How a line is given as a journal keeps it; null where nothing of it is said.
 *
 * @example storedHow({ over: quantity('30', 'min') })?.over // { value: '30', unit: 'min' }
 */
export function storedHow(how: How): HowGiven | null {
  const { formulation, over, container, loading, tablet, every, days, mark, xylitolFree, set, mixed } = how
  const all = [formulation, over, container, loading, tablet, every, days, mark, xylitolFree, set, mixed]
  if (all.every((one) => one === undefined)) return null
  return {
    formulation: formulation ?? null,
    over: over?.toJSON() ?? null,
    container: container
      ? {
          kind: container.kind,
          name: container.name,
          volume: container.volume.toJSON(),
          rate: container.rate.toJSON(),
          ownVolume: container.ownVolume ?? null,
          fluid: container.fluid ?? null,
        }
      : null,
    loading: loading
      ? {
          dose: loading.dose.toJSON() as NonNullable<HowGiven['loading']>['dose'],
          over: loading.over?.toJSON() ?? null,
        }
      : null,
    tablet: tablet
      ? { strength: tablet.strength.toJSON(), divides: tablet.divides ?? null, rounds: tablet.rounds ?? null }
      : null,
    every: every?.toJSON() ?? null,
    days: days ?? null,
    mark: mark?.toJSON() ?? null,
    xylitolFree: xylitolFree ?? null,
    set: set?.toJSON() ?? null,
    mixed: mixed
      ? {
          from: mixed.from.toJSON() as NonNullable<HowGiven['mixed']>['from'],
          product: mixed.product.toJSON(),
          final: mixed.final.toJSON(),
        }
      : null,
  }
}

/** The same, read back for the engine: what was not said is absent. */
export function readHow(how: HowGiven | null): How {
  if (how === null) return {}
  const { formulation, over, container, loading, tablet, every, days, mark, xylitolFree, set, mixed } = how
  return {
    ...(formulation !== null && { formulation }),
    ...(over && { over: fromStored(over) }),
    ...(container && {
      container: {
        kind: container.kind,
        name: container.name,
        volume: fromStored(container.volume),
        rate: fromStored(container.rate) as NonNullable<How['container']>['rate'],
        ...(container.ownVolume && { ownVolume: container.ownVolume }),
        ...(container.fluid && { fluid: container.fluid }),
      },
    }),
    ...(loading && {
      loading: { dose: fromStored(loading.dose) as Dose, ...(loading.over && { over: fromStored(loading.over) }) },
    }),
    ...(tablet && {
      tablet: {
        strength: fromStored(tablet.strength),
        ...(tablet.divides && { divides: tablet.divides }),
        ...(tablet.rounds && { rounds: tablet.rounds }),
      },
    }),
    ...(every && { every: fromStored(every) }),
    ...(days !== null && { days }),
    ...(mark && { mark: fromStored(mark) }),
    ...(xylitolFree !== null && { xylitolFree }),
    ...(set && { set: fromStored(set) }),
    ...(mixed && {
      mixed: {
        from: fromStored(mixed.from) as Stock,
        product: fromStored(mixed.product),
        final: fromStored(mixed.final),
      },
    }),
  }
}
