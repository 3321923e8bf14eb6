import type { Category } from '#core/culture/reading.ts'
import type { DifferencePoints } from './method.ts'

/** How far from susceptible; what tells nothing of a drug is not compared. */
const steps: Partial<Record<Category, number>> = { S: 0, I: 1, SDD: 1, R: 2 }

/**
 * How much two patterns differ, over the drugs that tell something in both: S to R counts one point, a step to or from
 * the middle half a point. What is only known as not susceptible (NS) differs from S alone.
 *
 * @example differencePoints(first, second, points) // 3: three drugs went from S to R
 */
export function differencePoints(
  one: ReadonlyMap<string, Category>,
  other: ReadonlyMap<string, Category>,
  points: DifferencePoints,
): number {
  let sum = 0
  for (const [drug, category] of one) {
    const now = other.get(drug)
    if (now !== undefined) sum += between(category, now, points)
  }
  return sum
}

function between(a: Category, b: Category, points: DifferencePoints): number {
  if (a === b) return 0
  if ((a === 'NS' && b === 'S') || (a === 'S' && b === 'NS')) return points.susceptibleToResistant
  const [from, to] = [steps[a], steps[b]]
  if (from === undefined || to === undefined) return 0
  const apart = Math.abs(from - to)
  return apart === 2 ? points.susceptibleToResistant : apart === 1 ? points.byOneStep : 0
}
