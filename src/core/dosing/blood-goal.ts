import type { Dose, Drug } from '#core/formulary/drug.ts'
import { Quantity } from '#core/units/quantity.ts'
import { type DoseFinding, found } from './findings.ts'
import type { DosedAnimal, PlannedLine } from './request.ts'
import type { DosingRules } from './rules.ts'
import { leanWeight } from './weight.ts'

/**
 * The dose of whole blood that lifts the PCV to a goal: blood per kilogram × (goal − now) ÷ PCV of the donor. Fat holds
 * little blood: the blood of a fat animal is counted on its lean weight, written per kilogram of the measured one. The
 * choice is the person's, who stated the goal.
 *
 * @example doseOfGoal(wholeBlood, line, dog, rules).dose // 42.857… mL/kg from 15 to 35 % with a donor of 42 %
 */
export function doseOfGoal(
  drug: Drug,
  { goal, dose }: PlannedLine,
  { species, weight, bodyCondition }: Pick<DosedAnimal, 'species' | 'weight' | 'bodyCondition'>,
  { transfusion: { byGoal, bloodPerKg }, weight: weightRules }: Pick<DosingRules, 'transfusion' | 'weight'>,
): { readonly dose?: Dose; readonly findings: readonly DoseFinding[] } {
  if (!goal) return { findings: [] }
  const about = { drug: drug.name, aim: goal.aim.toString(), now: goal.now.toString() }
  if (dose) return { findings: [found('block', 'goal-and-dose', about)] }
  if (drug.id !== byGoal.drug) return { findings: [found('block', 'goal-not-blood', about, [byGoal])] }
  const lift = goal.aim.value.minus(goal.now.value)
  if (lift.lte(0)) return { findings: [found('block', 'goal-order', about)] }
  const perKg = bloodPerKg[species].value.counted.value
  const perMeasured = perKg.times(lift).div(goal.donorPcv.value)
  const lean = weight && leanWeight(weight, bodyCondition, weightRules)
  if (!lean || lean.value.eq(weight.value)) return { dose: new Quantity(perMeasured, 'mL/kg') as Dose, findings: [] }
  const counted = { drug: drug.name, weight: weight.toString(), lean: lean.toString() }
  return {
    dose: new Quantity(perMeasured.times(lean.value).div(weight.value), 'mL/kg') as Dose,
    findings: [found('note', 'lean-weight-used', counted, [weightRules.lean])],
  }
}
