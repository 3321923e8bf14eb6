import { exactTest } from '#core/stats/exact-chances.ts'
import {
  eventFreeCases,
  exactInterval,
  jeffreysInterval,
  upperBound,
  wilsonInterval,
} from '#core/stats/proportion-interval.ts'
import { differenceOf, fisherExact } from '#core/stats/two-proportions.ts'
import { confidence, counted, end, ends, operation, share } from './operation.ts'

/** The read counts hold at least one case, so there is always an answer. */
function certain<Answer>(outcome: { readonly kind: 'answer'; readonly answer: Answer } | { readonly kind: 'refusal' }) {
  if (outcome.kind === 'refusal') throw new Error('A count without a case was read.')
  return outcome.answer
}

export const proportion = operation('proportion', { of: counted, confidence, against: share.optional() }, (input) => {
  const { of, against } = input
  const p = against === undefined ? null : exactTest(of, against)
  return {
    share: of.events / of.total,
    exact: ends(certain(exactInterval(of, input.confidence))),
    wilson: ends(certain(wilsonInterval(of, input.confidence))),
    jeffreys: ends(certain(jeffreysInterval(of, input.confidence))),
    upperOneSided: certain(upperBound(of, input.confidence)),
    ...(p && { against: { share: against ?? null, ...p } }),
  }
})

export const eventFree = operation('event-free', { rate: share, confidence }, (input) => ({
  cases: eventFreeCases(input.rate, input.confidence),
}))

export const difference = operation('difference', { first: counted, second: counted, confidence }, (input) => {
  const apart = certain(differenceOf(input.first, input.second, input.confidence))
  const exact = certain(fisherExact(input.first, input.second, input.confidence))
  return {
    difference: apart.difference,
    interval: ends(apart.interval),
    fisherP: exact.p,
    oddsRatio: { value: end(exact.oddsRatio), interval: ends(exact.interval) },
  }
})
