import type { BodyOf } from '#core/journal/fold.ts'

/** A round in which nothing was looked at yet: what a person tapped is put over it. */
export const emptyRound: BodyOf<'ward-score'> = {
  pain: null,
  notScoredBecause: null,
  action: null,
  given: [],
  rescoreAt: null,
  LEFT: { blink: 'not-assessed', lubricated: 'not-assessed' },
  RIGHT: { blink: 'not-assessed', lubricated: 'not-assessed' },
  bandage: 'not-assessed',
  airway: 'not-assessed',
  throat: 'not-assessed',
  eats: 'not-assessed',
  urine: 'not-assessed',
  text: null,
}
