import { type GridDistribution, logBetween } from './grid-distribution.ts'

/** Probabilities and quantiles of a grid, on the log odds scale. */
export type GridBelow = {
  readonly below: (at: number) => number
  readonly density: (at: number) => number
  readonly quantile: (probability: number) => number
}

/** ∫ over one step of the polynomial through the eight nearest nodes. */
const overOneStep = [-191, 1879, -9531, 68323, 68323, -9531, 1879, -191].map((weight) => weight / 120960)
/** Gauss-Legendre points and weights on 0–1, four of them. */
const points = [
  [0.0694318442029737, 0.173927422568727],
  [0.330009478207572, 0.326072577431273],
  [0.669990521792428, 0.326072577431273],
  [0.930568155797026, 0.173927422568727],
] as const

/**
 * The running integral of a grid's density: whole steps by their polynomial, the rest of a step through the
 * interpolated logarithm.
 */
export function gridBelow({ from, step, density }: GridDistribution): GridBelow {
  const size = density.length
  const sums = new Float64Array(size)
  for (let t = 1; t < size; t += 1) {
    let more = 0
    for (let i = 0; i < 8; i += 1) more += (overOneStep[i] ?? 0) * (density[t - 4 + i] ?? 0)
    sums[t] = (sums[t - 1] ?? 0) + more * step
  }
  const height = (position: number) => Math.exp(logBetween(density, position))
  const below = (at: number) => {
    const position = (at - from) / step
    if (position <= 0) return 0
    if (position >= size - 1) return 1
    const node = Math.floor(position)
    const part = position - node
    let more = 0
    for (const [point, weight] of points) more += weight * height(node + point * part)
    return (sums[node] ?? 0) + more * part * step
  }
  const densityAt = (at: number) => {
    const position = (at - from) / step
    return position < 0 || position > size - 1 ? 0 : height(position)
  }
  return {
    below,
    density: densityAt,
    quantile: (probability) => {
      const next = sums.findIndex((sum) => sum >= probability)
      if (next === -1) return from + (size - 1) * step
      let at = from + Math.max(0, next - 0.5) * step
      for (let round = 0; round < 60; round += 1) {
        const move = Math.max(-step, Math.min(step, (below(at) - probability) / densityAt(at)))
        if (!Number.isFinite(move)) break
        at -= move
        if (Math.abs(move) < 1e-12) break
      }
      return at
    },
  }
}
