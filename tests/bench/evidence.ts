import { binomialNormal } from '#core/stats/pooling/binomial-normal.ts'
import { planOf } from '#core/stats/predictive/plan.ts'
import { predictiveOf } from '#core/stats/predictive/predictive.ts'
import { summaryOf } from '#core/stats/predictive/summary.ts'
import { robustly, updatedBy } from '#core/stats/predictive/update.ts'

/** Invented studies: 20 to 219 cases, shares about 14 % with a spread of 0.5 on the log odds scale; the same every time. */
export function inventedStudies(size: number): { events: number; total: number }[] {
  let seed = 20261129
  const chance = () => {
    seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0
    return (seed + 0.5) / 2 ** 32
  }
  return Array.from({ length: size }, () => {
    const total = 20 + Math.floor(200 * chance())
    const normal = Math.sqrt(-2 * Math.log(chance())) * Math.cos(2 * Math.PI * chance())
    const share = 1 / (1 + Math.exp(1.8 - 0.5 * normal))
    let events = 0
    for (let one = 0; one < total; one += 1) if (chance() < share) events += 1
    return { events, total }
  })
}

/** Median milliseconds of processor time over a few batches after a warm-up, with the last answer: the machine is shared. */
function timed<Answer>(work: () => Answer, rounds: number): { readonly ms: number; readonly answer: Answer } {
  const batches = 9
  let answer = work()
  for (let round = 0; round < rounds; round += 1) answer = work()
  const times = Array.from({ length: batches }, () => {
    const began = process.cpuUsage()
    for (let round = 0; round < rounds; round += 1) answer = work()
    const { user, system } = process.cpuUsage(began)
    return (user + system) / 1000 / rounds
  }).sort((a, b) => a - b)
  return { ms: times[Math.floor(batches / 2)] ?? 0, answer }
}

const priors = { mu: { mean: 0, sd: 2 }, tauScale: 1 }

/** Pooling and prior of the same studies: median milliseconds of processor time, and the answers for comparison. */
export function benchEvidence(size: number) {
  const studies = inventedStudies(size)
  const rounds = size > 500 ? 1 : size > 50 ? 5 : 20
  const { nodes, tau } = planOf(studies, priors)
  const pooling = timed(() => binomialNormal(studies), rounds)
  const prior = timed(() => {
    const predictive = predictiveOf(studies, priors)
    const { mean, sd, interval } = summaryOf(predictive.distribution)
    return { mean, sd, low: interval.low, high: interval.high, logMarginal: predictive.logMarginalLikelihood }
  }, rounds)
  return {
    studies,
    pooling: { ms: pooling.ms, mu: pooling.answer?.mu ?? Number.NaN, tau: pooling.answer?.tau ?? Number.NaN },
    prior: { ms: prior.ms, ...prior.answer },
    /** Our own nodes, handed to the other program so that it need not look for them. */
    plan: { ...nodes, unit: tau.unit, tauStep: tau.step, last: tau.last, mean: 0, sd: 2, scale: 1 },
  }
}

/** Twelve outcomes of a case, each from up to twelve studies: prior, made robust, own results added, both said. */
export function benchOddsOfACase(outcomes = 12): number {
  const all = inventedStudies(12 * outcomes)
  return timed(() => {
    for (let index = 0; index < outcomes; index += 1) {
      const { distribution } = predictiveOf(all.slice(12 * index, 12 * index + 1 + (index % 12)), priors)
      const robust = robustly(distribution, { weight: 0.2 })
      const after = updatedBy(robust, { events: index % 3, total: 12 }).distribution
      for (const one of [distribution, after]) summaryOf(one)
    }
  }, 3).ms
}
