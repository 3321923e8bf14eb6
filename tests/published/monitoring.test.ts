/** Reference values computed with R by the formulas of Steiner and others 2000, and exactly by recursion (data/monitoring.json). */
import { describe, expect, it } from 'vitest'
import { cusumPath, cusumScore, signalWithin } from '#core/stats/monitoring/cusum.ts'
import reference from './data/monitoring.json' with { type: 'json' }

function expectClose(value: number | undefined, wanted: number, tolerance: number): void {
  if (value === undefined) throw new Error(`Nothing instead of ${wanted}.`)
  const off = Math.abs(wanted) < 1e-12 ? Math.abs(value - wanted) : Math.abs(value - wanted) / Math.abs(wanted)
  expect(off, `${value} instead of ${wanted}`).toBeLessThanOrEqual(tolerance)
}

describe('the risk-adjusted chart agrees with the reference to 1e-12', () => {
  it.each(reference.charts)('$id', ({ input, output }) => {
    const operations = input.p.map((risk, i) => ({ risk, event: input.y[i] === 1 }))
    output.weight.forEach((weight, i) => {
      const operation = operations[i]
      expectClose(operation && cusumScore(operation, input.RA), weight, 1e-12)
    })
    const { path, signals } = cusumPath(operations, { ratio: input.RA, limit: input.h })
    output.cusum.forEach((value, i) => {
      expectClose(path[i], value, 1e-12)
    })
    const first = path.findIndex((value) => value >= input.h)
    expect(signals[0] ?? -1).toBe(first)
  })

  // The second score of the last case is printed as 0.05083 in the documentation of an R package for such charts (read).
  it.each(reference.scores)('$id', ({ input, output }) => {
    output.weight.forEach((weight, i) => {
      const ratio = Array.isArray(input.RA) ? (input.RA[i] ?? 0) : input.RA
      expectClose(cusumScore({ risk: input.p[i] ?? 0, event: input.y[i] === 1 }, ratio), weight, 1e-12)
    })
  })
})

describe('the chance of a signal within so many operations agrees with the exact recursion to 1e-9', () => {
  it.each(reference.runLengths)('$id', ({ input, output }) => {
    const design = { ratio: input.RA, limit: input.h }
    input.n.forEach((operations, i) => {
      expectClose(signalWithin(operations, input.p, design), output.in_control[i] ?? 0, 1e-9)
      expectClose(signalWithin(operations, input.p, design, input.RA), output.shifted[i] ?? 0, 1e-9)
    })
  })
})
