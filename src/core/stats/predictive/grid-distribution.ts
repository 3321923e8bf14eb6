/**
 * A distribution of a share, as a density on equally spaced log odds: density[t] stands at from + t·step, and
 * Σ density · step = 1. Sums over such a grid are exact to many digits, because the densities are smooth and end at 0.
 */
export type GridDistribution = { readonly from: number; readonly step: number; readonly density: Float64Array }

/**
 * A density scaled to mass 1, its empty ends cut off.
 *
 * @returns the distribution, and the mass before scaling.
 */
export function normalised(
  from: number,
  step: number,
  heights: Float64Array,
): { readonly distribution: GridDistribution; readonly mass: number } {
  let sum = 0
  let most = 0
  for (const height of heights) {
    sum += height
    if (height > most) most = height
  }
  const mass = sum * step
  if (!(mass > 0 && Number.isFinite(mass))) throw new Error('A density without mass.')
  const least = most * 1e-26
  const first = heights.findIndex((height) => height > least)
  const last = heights.findLastIndex((height) => height > least)
  const density = heights.slice(first, last + 1)
  for (let t = 0; t < density.length; t += 1) density[t] = (density[t] ?? 0) / mass
  return { distribution: { from: from + first * step, step, density }, mass }
}

/**
 * A value between equally spaced ones, by the polynomial through the eight nearest (a smooth logarithm of a density
 * loses nothing that matters by it).
 *
 * @param position in nodes, from 0; beyond the ends the end polynomial is followed.
 */
export function between(values: ArrayLike<number>, position: number): number {
  const start = Math.max(0, Math.min(values.length - 8, Math.floor(position) - 3))
  const count = Math.min(8, values.length)
  let above = 0
  let below = 0
  let weight = 1
  for (let i = 0; i < count; i += 1) {
    const apart = position - start - i
    const value = values[start + i] ?? 0
    if (apart === 0) return value
    above += (weight / apart) * value
    below += weight / apart
    weight *= -(count - 1 - i) / (i + 1)
  }
  return above / below
}

/** The same for the logarithm of positive values, taken only of the eight that are needed. */
export function logBetween(values: Float64Array, position: number): number {
  const start = Math.max(0, Math.min(values.length - 8, Math.floor(position) - 3))
  return between(values.subarray(start, start + 8).map(Math.log), position - start)
}
