import { digamma, trigamma } from '../digamma.ts'
import { logBeta } from '../incomplete-beta.ts'
import type { BetaMixture } from './beta-mixture.ts'

/** The distribution to be fitted: masses, with ln p and ln(1 − p) of each node. */
export type FitNodes = {
  readonly weight: Float64Array
  readonly logP: Float64Array
  readonly logQ: Float64Array
}

/** A set of parameters with the expected log density there, its slope and its bend. */
export type FitPoint = {
  readonly at: readonly number[]
  readonly value: number
  readonly slope: readonly number[]
  readonly bend: readonly (readonly number[])[]
}

/** Parameters: ln of the weights of the second part on, over the first; ln of every a; ln of every b. */
export function mixtureOf(at: readonly number[], parts: number): BetaMixture {
  const logs = Array.from({ length: parts }, (_, j) => (j === 0 ? 0 : (at[j - 1] ?? 0)))
  const top = Math.max(...logs)
  const heights = logs.map((log) => Math.exp(log - top))
  const sum = heights.reduce((all, height) => all + height, 0)
  return heights.map((height, j) => ({
    weight: height / sum,
    a: Math.exp(at[parts - 1 + j] ?? 0),
    b: Math.exp(at[2 * parts - 1 + j] ?? 0),
  }))
}

/** The expected ln of the mixture's density under the nodes' masses, with first and second derivatives. */
export function fitAt(at: readonly number[], parts: number, { weight, logP, logQ }: FitNodes): FitPoint {
  const size = 3 * parts - 1
  const mixture = mixtureOf(at, parts)
  const each = mixture.map(({ weight: share, a, b }) => ({
    a,
    b,
    same: Math.log(share) - logBeta(a, b),
    atA: digamma(a) - digamma(a + b),
    atB: digamma(b) - digamma(a + b),
    bendA: a * a * (trigamma(a + b) - trigamma(a)),
    bendB: b * b * (trigamma(a + b) - trigamma(b)),
    both: a * b * trigamma(a + b),
  }))
  const slope = new Float64Array(size)
  const bend = new Float64Array(size * size)
  const shares = new Float64Array(parts)
  const whole = new Float64Array(size)
  let value = 0
  const scores = mixture.map((_, j) =>
    Float64Array.from({ length: size }, (_, i) =>
      i < parts - 1 ? (j === i + 1 ? 1 : 0) - (mixture[i + 1]?.weight ?? 0) : 0,
    ),
  )
  for (let t = 0; t < weight.length; t += 1) {
    const mass = weight[t] ?? 0
    const p = logP[t] ?? 0
    const q = logQ[t] ?? 0
    let top = Number.NEGATIVE_INFINITY
    for (let j = 0; j < parts; j += 1) {
      const { a, b, same } = each[j] ?? nothing
      const log = same + (a - 1) * p + (b - 1) * q
      shares[j] = log
      if (log > top) top = log
    }
    let sum = 0
    for (let j = 0; j < parts; j += 1) {
      const height = Math.exp((shares[j] ?? 0) - top)
      shares[j] = height
      sum += height
    }
    value += mass * (top + Math.log(sum))
    whole.fill(0)
    for (let j = 0; j < parts; j += 1) {
      const share = (shares[j] ?? 0) / sum
      const part = each[j] ?? nothing
      const score = scores[j] ?? whole
      const [atA, atB] = [parts - 1 + j, 2 * parts - 1 + j]
      score[atA] = part.a * (p - part.atA)
      score[atB] = part.b * (q - part.atB)
      addTo(bend, atA * size + atA, mass * share * ((score[atA] ?? 0) + part.bendA))
      addTo(bend, atB * size + atB, mass * share * ((score[atB] ?? 0) + part.bendB))
      addTo(bend, atB * size + atA, mass * share * part.both)
      addProducts(bend, score, mass * share)
      for (let i = 0; i < size; i += 1) whole[i] = (whole[i] ?? 0) + share * (score[i] ?? 0)
    }
    addProducts(bend, whole, -mass)
    for (let i = 0; i < size; i += 1) slope[i] = (slope[i] ?? 0) + mass * (whole[i] ?? 0)
  }
  for (let j = 1; j < parts; j += 1) {
    for (let k = 1; k <= j; k += 1) {
      const [one, other] = [mixture[j]?.weight ?? 0, mixture[k]?.weight ?? 0]
      const place = (j - 1) * size + k - 1
      bend[place] = (bend[place] ?? 0) - (j === k ? one : 0) + one * other
    }
  }
  return {
    at,
    value,
    slope: [...slope],
    bend: Array.from({ length: size }, (_, i) =>
      Array.from({ length: size }, (_, k) => bend[Math.max(i, k) * size + Math.min(i, k)] ?? 0),
    ),
  }
}

const nothing = { a: 1, b: 1, same: 0, atA: 0, atB: 0, bendA: 0, bendB: 0, both: 0 }

function addTo(sums: Float64Array, place: number, more: number): void {
  sums[place] = (sums[place] ?? 0) + more
}

/** Adds factor · vector · vectorᵀ to the lower half. */
function addProducts(sums: Float64Array, vector: Float64Array, factor: number): void {
  const size = vector.length
  for (let i = 0; i < size; i += 1) {
    const row = factor * (vector[i] ?? 0)
    if (row === 0) continue
    for (let k = 0; k <= i; k += 1) sums[i * size + k] = (sums[i * size + k] ?? 0) + row * (vector[k] ?? 0)
  }
}
