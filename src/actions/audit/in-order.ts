import { z } from 'zod'
import { cusumPath, signalWithin } from '#core/stats/monitoring/cusum.ts'
import { expectedLessObserved } from '#core/stats/monitoring/expected-less-observed.ts'
import { confidence, operation, share, whole } from './operation.ts'

const cases = z.array(z.strictObject({ risk: share, event: z.boolean() })).min(1)

/** Limits are worked out anew for every case, so the work grows with the square of their number. */
const most = 5000

export const running = operation('expected-less-observed', { cases: cases.max(most), confidence }, (input) => ({
  path: expectedLessObserved(input.cases, input.confidence).map(({ value, expected, observed, low, high }) => ({
    value,
    expected,
    observed,
    interval: [low, high],
  })),
}))

const design = { ratio: z.number().positive(), limit: z.number().positive() }

export const cusum = operation('cusum', { cases, ...design }, (input) => {
  const { path, signals } = cusumPath(input.cases, { ratio: input.ratio, limit: input.limit })
  return { path: [...path], signals: signals.map((at) => at + 1) }
})

export const falseAlarms = operation('false-alarms', { risk: share, ...design, cases: whole(1).max(2000) }, (input) => {
  const about = { ratio: input.ratio, limit: input.limit }
  return {
    asExpected: signalWithin(input.cases, input.risk, about),
    withRatio: signalWithin(input.cases, input.risk, about, input.ratio),
  }
})
