import type { Line } from '#core/journal/fold.ts'
import type { Moment } from '#core/time/moment.ts'
import type { TroubleEvent, TroubleNeed } from './trouble-codes.ts'

/** One entry that speaks of a trouble, whatever it was written for. */
export type Sighting = {
  readonly event: TroubleEvent
  readonly unit: 'ear' | 'animal'
  readonly at: Moment
  readonly needed: TroubleNeed
  /** Against the baseline at this look: worse than then, no worse, or not known. */
  readonly worse: boolean | null
  readonly entry: string
}

/** When the line happened, in the zone it was lived in. */
export function momentOf({ at, header }: Pick<Line, 'at' | 'header'>): Moment {
  return { ...header.happenedAt, at }
}
