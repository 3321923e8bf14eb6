import { type Dose, type DoseRow, type Drug, drugById } from '#core/formulary/drug.ts'
import { type AnyQuantity, Decimal, plain, Quantity } from '#core/units/quantity.ts'
import { amountOf, type Body, bodySurface, kindOf } from './amount.ts'
import { judgeAnimal, judgeReduced } from './animal-checks.ts'
import { doseOfGoal } from './blood-goal.ts'
import { chooseDose, judgeRange, notChosen } from './chosen-dose.ts'
import { judgeCourse, judgeInterval, withInterval } from './dispense.ts'
import { judgeEar } from './ear-checks.ts'
import { judgeExclusions } from './exclusions.ts'
import { type DoseFinding, found, isBlock } from './findings.ts'
import { hasDailyLimitPerKilogram, judgeSingle } from './limits.ts'
import { judgePatch } from './patch.ts'
import type { ChosenBy, DoseRequest, DosingKnowledge, PlannedLine } from './request.ts'
import { findRow, nearNames } from './row.ts'
import { strengthMixed } from './strength-in-hand.ts'
import { isBetweenWeights, leanWeight, usesLeanWeight } from './weight.ts'

/** A line on its way: what is known of it so far, and everything found. */
export type Draft = {
  readonly line: PlannedLine
  readonly drug?: Drug
  readonly row?: DoseRow
  readonly dose?: Dose
  readonly chosenBy?: ChosenBy
  readonly body?: Body
  readonly amount?: AnyQuantity
  readonly rows: readonly string[]
  readonly findings: readonly DoseFinding[]
}

export function add(draft: Draft, findings: readonly DoseFinding[]): Draft {
  return { ...draft, findings: [...draft.findings, ...findings] }
}

/** Which drug, which row, whose dose; and everything that bars the row in this animal. */
export function identify(sent: PlannedLine, request: DoseRequest, knowledge: DosingKnowledge): Draft {
  const asked = sent.mixed && !sent.stock ? { ...sent, stock: strengthMixed(sent.mixed) } : sent
  const drug = drugById(knowledge.drugs, asked.drug)
  if (!drug) {
    const near = nearNames(knowledge.drugs, asked.drug).join(', ') || 'none'
    return { line: asked, rows: [], findings: [found('block', 'drug-unknown', { drug: asked.drug, near })] }
  }
  const inAnimal = (line: PlannedLine) => [
    ...judgeAnimal(drug, line, request.animal, knowledge.rules),
    ...judgeEar(drug, line, request.animal, knowledge.rules),
  ]
  if (asked.use === 'ear') {
    const line = { ...asked, drug: drug.id }
    const notMeasured = found('block', 'ear-product-not-measured', { drug: drug.name })
    return { line, drug, rows: [], findings: [notMeasured, ...inAnimal(line)] }
  }
  const { species } = request.animal
  const goal = doseOfGoal(drug, asked, request.animal, knowledge.rules)
  const wanted = { ...asked, drug: drug.id, ...(goal.dose && { dose: goal.dose }) }
  const choice = chooseDose(wanted, request.plan, species, knowledge)
  const { line } = choice
  const dose = choice.kind === 'chosen' ? choice.dose : undefined
  const row = findRow(drug, species, line, dose)
  if (row.kind === 'refusal') {
    const { finding, rows } = row.refusal
    const more = choice.kind === 'not-chosen' ? choice.findings : []
    return { line, drug, rows, findings: [finding, ...inAnimal(line), ...more], ...(dose && { dose }) }
  }
  const { weight, bodyCondition } = request.animal
  // An amount given is read on the lean weight, on which it was dosed if the animal is fat.
  const lean = weight && leanWeight(weight, bodyCondition, knowledge.rules.weight)
  const excluded = [
    ...judgeExclusions(drug, row.answer, request, knowledge.drugs, lean),
    ...inAnimal(line),
    ...judgeInterval(drug, row.answer, line.every),
    ...judgeCourse(drug, row.answer, line.days),
    ...goal.findings,
  ]
  const draft = { line, drug, row: withInterval(row.answer, line.every), rows: [] }
  if (choice.kind === 'not-chosen') {
    return { ...draft, findings: [...choice.findings, notChosen(drug.name, row.answer), ...excluded] }
  }
  const range = [
    ...judgeRange(drug.name, row.answer, choice.dose, knowledge.rules),
    ...judgeReduced(drug, row.answer, choice.dose, request.animal, knowledge.rules),
  ]
  return { ...draft, dose: choice.dose, chosenBy: choice.by, findings: [...excluded, ...range] }
}

/** The amount, on the weight that counts for this drug; refused when the weight is missing or impossible. */
export function weigh(
  draft: Draft,
  weight: readonly DoseFinding[],
  request: DoseRequest,
  { rules, own, toolSurface }: DosingKnowledge,
): Draft {
  const { dose, drug, row } = draft
  if (!dose || !drug || !row) return draft
  const { animal } = request
  const needsWeight = !kindOf(dose).startsWith('flat') && kindOf(dose) !== 'infusion-flat'
  const blocked = weight.filter(isBlock)
  if (needsWeight && blocked.length > 0) return add(draft, blocked)
  if (!animal.weight) {
    const amount = amountOf(dose, nobody)
    return add({ ...draft, amount }, [
      ...judgeSingle(drug.name, row, dose, amount),
      ...(hasDailyLimitPerKilogram(row) ? [found('block', 'weight-unknown')] : []),
    ])
  }

  const usesLean = usesLeanWeight(drug, row.use, rules)
  const counted = usesLean ? leanWeight(animal.weight, animal.bodyCondition, rules.weight) : animal.weight
  const needsSurface = kindOf(dose) === 'per-surface'
  const surface = needsSurface ? bodySurface(counted, rules.bodySurface[animal.species].value) : nobody.surface
  const amount = amountOf(dose, { weight: counted, surface })
  const findings = [
    ...judgeSingle(drug.name, row, dose, amount),
    ...judgePatch(drug, row, amount, animal.weight, rules),
  ]
  const ownFactor = needsSurface ? own?.surface[animal.species] : undefined
  if (ownFactor) {
    const { by, on, because, value } = ownFactor
    const tool = toolSurface?.[animal.species]
    const about = { by, on, because, k: plain(value), own: plain(new Decimal(tool?.value ?? value)) }
    findings.push(found('note', 'house-surface-factor', about, [ownFactor, ...(tool ? [tool] : [])]))
  }
  if (needsWeight && !counted.value.eq(animal.weight.value)) {
    const about = {
      drug: drug.name,
      weight: animal.weight.toString(),
      lean: `${plain(counted.value.toDecimalPlaces(2))} kg`,
    }
    findings.push(
      found('note', 'lean-weight-used', about, [rules.weight.lean, rules.leanWeightGroups, rules.leanWeightInfusions]),
    )
  }
  const lean = leanWeight(animal.weight, animal.bodyCondition, rules.weight)
  if (needsWeight && !lean.value.eq(animal.weight.value) && isBetweenWeights(drug, rules)) {
    const on = (kilograms: Quantity<'kg'>) => {
      const { value, unit } = amountOf(dose, { weight: kilograms, surface })
      return `${plain(value.toSignificantDigits(4))} ${unit}`
    }
    const about = {
      drug: drug.name,
      weight: animal.weight.toString(),
      lean: lean.toString(),
      onLean: on(lean),
      onMeasured: on(animal.weight),
    }
    findings.push(found('confirm', 'weight-between', about, [rules.betweenWeights, rules.weight.lean]))
  }
  if (needsWeight && weight.some((finding) => finding.level === 'confirm')) {
    findings.push(found('confirm', 'weight-unconfirmed', { weight: animal.weight.toString() }))
  }
  return add({ ...draft, amount, body: { weight: counted, surface } }, findings)
}

/** For doses that count per animal or per eye when nobody weighed: nothing is multiplied with it. */
export const nobody: Body = { weight: new Quantity(new Decimal(1), 'kg'), surface: new Quantity(new Decimal(1), 'm2') }
