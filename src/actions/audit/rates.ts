import { z } from 'zod'
import { observedOverExpected, poissonRate, rateRatio } from '#core/stats/poisson-rate.ts'
import { confidence, end, ends, operation, whole } from './operation.ts'

const exposed = z.strictObject({ events: whole(0).max(1_000_000), exposure: z.number().positive().max(1e9) })

export const rate = operation('rate', { of: exposed, confidence }, (input) => {
  const found = poissonRate(input.of, input.confidence)
  return { rate: found.rate, interval: ends(found.interval) }
})

export const rates = operation('rate-ratio', { first: exposed, second: exposed, confidence }, (input) => {
  const { ratio, interval, p } = rateRatio(input.first, input.second, input.confidence)
  return { ratio: end(ratio), interval: ends(interval), p }
})

export const observedExpected = operation(
  'observed-expected',
  { observed: whole(0).max(1_000_000), expected: z.number().positive().max(1_000_000), confidence },
  (input) => {
    const { ratio, interval, byar, p } = observedOverExpected(input.observed, input.expected, input.confidence)
    return { ratio, interval: ends(interval), byar: ends(byar), p }
  },
)
