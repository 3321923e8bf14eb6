import type { Species } from '#core/animal/species.ts'
import type { Dose, Drug } from '#core/formulary/drug.ts'
import { Quantity } from '#core/units/quantity.ts'
import { type DoseFinding, found } from './findings.ts'
import type { PlannedLine } from './request.ts'
import type { TransfusionRules } from './rules.ts'

/**
 * The dose of whole blood that lifts the PCV to a goal: blood per kilogram × (goal − now) ÷ PCV of the donor. The
 * weight cancels; the choice is the person's, who stated the goal.
 *
 * @example doseOfGoal(wholeBlood, line, 'dog', rules).dose // 42.857… mL/kg from 15 to 35 % with a donor of 42 %
 */
export function doseOfGoal(
  drug: Drug,
  { goal, dose }: PlannedLine,
  species: Species,
  { byGoal, bloodPerKg }: Pick<TransfusionRules, 'byGoal' | 'bloodPerKg'>,
): { readonly dose?: Dose; readonly findings: readonly DoseFinding[] } {
  if (!goal) return { findings: [] }
  const about = { drug: drug.name, aim: goal.aim.toString(), now: goal.now.toString() }
  if (dose) return { findings: [found('block', 'goal-and-dose', about)] }
  if (drug.id !== byGoal.drug) return { findings: [found('block', 'goal-not-blood', about, [byGoal])] }
  const lift = goal.aim.value.minus(goal.now.value)
  if (lift.lte(0)) return { findings: [found('block', 'goal-order', about)] }
  const perKg = bloodPerKg[species].value.counted.value
  return { dose: new Quantity(perKg.times(lift).div(goal.donorPcv.value), 'mL/kg') as Dose, findings: [] }
}
