import fc from 'fast-check'
import { holdLaws, judge, lawsOfTwo, told } from './laws.ts'
import { type RandomPlan, randomPlans } from './random-plans.ts'

/** Few enough to show progress often. */
const batch = 2000

/** A law that did not hold: the number that makes the same plans again, and the smallest plan that breaks it. */
export type Broken = { readonly seed: number; readonly sentence: string }

/**
 * Holds random plans against the laws until the number is reached or one is broken. Every batch has a seed of its own,
 * so that a broken one can be run again by itself.
 *
 * @example runLaws(2000, 1, () => {}) // undefined: all hold
 */
export function runLaws(plans: number, seed: number, progress: (done: number) => void): Broken | undefined {
  const property = fc.property(randomPlans, fc.nat(lawsOfTwo.length - 1), holdLaws)
  for (let done = 0; done < plans; done += batch) {
    const many = Math.min(batch, plans - done)
    const outcome = fc.check(property, { numRuns: many, seed: seed + done })
    if (outcome.failed) return { seed: seed + done, sentence: said(outcome.counterexample?.[0], outcome.errorInstance) }
    progress(many)
  }
  return undefined
}

function said(plan: RandomPlan | undefined, error: unknown): string {
  const sentence = error instanceof Error ? error.message : String(error)
  return plan ? `${sentence}\n${JSON.stringify(plan)}\n${told(judge(plan.request))}` : sentence
}
