import type { Drip, Drops } from '#core/dosing/drops.ts'
import { type QuantityAnswer, write, writeRounded } from './write-quantity.ts'

type DropsAnswer = { readonly count: QuantityAnswer; readonly gives: QuantityAnswer }

export type DripAnswer = DropsAnswer & {
  readonly set: QuantityAnswer
  readonly perMinute: QuantityAnswer
  readonly hours: readonly (DropsAnswer & { readonly hour: number })[]
  readonly together?: DropsAnswer
}

/** The drops of a gravity set: exact, counted, and what the counted ones give. */
export function writeDrip({ set, perMinute, hours, together, ...drops }: Drip): DripAnswer {
  return {
    set: write(set),
    perMinute: writeRounded(perMinute),
    ...writeDrops(drops),
    hours: hours.map(({ hour, ...ofHour }) => ({ hour, ...writeDrops(ofHour) })),
    ...(together && { together: writeDrops(together) }),
  }
}

function writeDrops({ count, gives }: Drops): DropsAnswer {
  return { count: write(count), gives: writeRounded(gives) }
}
