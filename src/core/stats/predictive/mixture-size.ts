import { expit } from '../logistic.ts'
import { type BetaMixture, mixtureMoments } from './beta-mixture.ts'
import type { EffectiveSize } from './effective-size.ts'
import { logBetaDensity } from './share-distribution.ts'

/**
 * How many earlier cases a mixture is worth: by mean and spread, by the expected local-information ratio (Neuenschwander
 * et al., Biometrics 2020;76:578–587), and by the bend of the density at its mode (Morita et al., Biometrics
 * 2008;64:595–602), which is liberal with mixtures.
 *
 * @example mixtureSize(published) // { moment: 26.02…, local: 36.82…, atMode: 62.67…, … }
 */
export function mixtureSize(mixture: BetaMixture): EffectiveSize & { readonly mode: number; readonly atMode: number } {
  const { mean, sd } = mixtureMoments(mixture)
  const mode = modeOf(mixture)
  // The bend of a Beta of the same mode with almost no weight is taken off.
  const flat = 100
  const vague = (mode / flat - 1) / mode ** 2 + ((1 - mode) / flat - 1) / (1 - mode) ** 2
  const expected = (1 - mean) / (1 - mode) ** 2 + mean / mode ** 2
  const exists = mixture.every(({ a, b }) => a >= 1 && b >= 1)
  return {
    moment: (mean * (1 - mean)) / (sd * sd) - 1,
    local: exists ? expectedLocal(mixture) : null,
    tailDominated: false,
    mode,
    atMode: (localAt(mixture, mode).information - vague) / expected,
  }
}

/** −(d² ln f/dp²) at a share, and the slope of ln f there. */
function localAt(mixture: BetaMixture, p: number): { readonly information: number; readonly slope: number } {
  const logs = mixture.map((part) => Math.log(part.weight) + logBetaDensity(Math.log(p / (1 - p)), part))
  const top = Math.max(...logs)
  const heights = logs.map((log) => Math.exp(log - top))
  const sum = heights.reduce((all, height) => all + height, 0)
  let slope = 0
  let bend = 0
  mixture.forEach(({ a, b }, index) => {
    const share = (heights[index] ?? 0) / sum
    const own = (a - 1) / p - (b - 1) / (1 - p)
    slope += share * own
    bend += share * (-(a - 1) / p ** 2 - (b - 1) / (1 - p) ** 2 + own * own)
  })
  return { information: slope * slope - bend, slope }
}

/** E[information · p(1 − p)] on the log odds scale. */
function expectedLocal(mixture: BetaMixture): number {
  const step = 0.02
  let sum = 0
  for (let at = -34; at <= 34; at += step) {
    const p = expit(at)
    const height = mixture.reduce((all, part) => all + part.weight * Math.exp(logBetaDensity(at, part)), 0)
    // 1 − p rounds to 0 out there, and nothing is left of the density.
    if (height > 0 && p < 1) sum += height * localAt(mixture, p).information * p * (1 - p)
  }
  return sum * step
}

/** The share of the highest density, from the best of a fine grid by Newton steps. */
function modeOf(mixture: BetaMixture): number {
  const height = (p: number) =>
    mixture.reduce(
      (all, part) => all + (part.weight * Math.exp(logBetaDensity(Math.log(p / (1 - p)), part))) / (p * (1 - p)),
      0,
    )
  let mode = 0.0005
  for (let i = 1; i < 2000; i += 1) if (height(i / 2000) > height(mode)) mode = i / 2000
  for (let round = 0; round < 30; round += 1) {
    const { information, slope } = localAt(mixture, mode)
    const next = mode + slope / information
    if (!(Math.abs(next - mode) < 1e-3) || next <= 0 || next >= 1) break
    mode = next
  }
  return mode
}
