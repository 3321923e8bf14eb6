import type { Provenance } from '#core/evidence/sourced.ts'
import { type Dose, type DoseRow, type Drug, drugById } from '#core/formulary/drug.ts'
import { bySeverity } from '#core/outcome/finding.ts'
import { type AnyQuantity, convert, Decimal, plain, Quantity } from '#core/units/quantity.ts'
import { amountOf, type Body, bodySurface, kindOf } from './amount.ts'
import { chooseDose, judgeRange, notChosen } from './chosen-dose.ts'
import { draw } from './draw.ts'
import type { Drawing } from './drawing.ts'
import { judgeExclusions, saidOf } from './exclusions.ts'
import { type DoseFinding, found, isBlock } from './findings.ts'
import { drugsGiven } from './given-drug.ts'
import { judgeInteractions, type Planned } from './interactions.ts'
import { judgeDay, judgeSingle, type PlannedMass } from './limits.ts'
import { type Ceiling, judgeCeiling } from './local-anaesthetic-ceiling.ts'
import { judgePatch } from './patch.ts'
import { judgeRepeat } from './repeat.ts'
import type { ChosenBy, DoseLine, DoseRequest, DosingKnowledge, PlannedLine } from './request.ts'
import { findRow, nearNames } from './row.ts'
import { judgeUnsettled } from './unsettled.ts'
import { judgeAge, judgeWeight, leanWeight, usesLeanWeight } from './weight.ts'

export type DoseResult = {
  readonly lines: readonly DoseLine[]
  readonly ceilings: readonly Ceiling[]
  /** About the animal and what it was given. */
  readonly findings: readonly DoseFinding[]
}

/** A line on its way: what is known of it so far, and everything found. */
type Draft = {
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

/**
 * Judges every line of a plan for one animal: what to draw, or why not and what would make it possible.
 * Judges plans only; what was given is counted, never refused. Never picks a dose.
 *
 * @example doseLines({ animal, given: [], lines: [{ id: 'l1', drug: 'bupivacaine', use: 'local_block', dose, stock }] }, knowledge)
 */
export function doseLines(request: DoseRequest, knowledge: DosingKnowledge): DoseResult {
  const { animal } = request
  const weight = judgeWeight(animal, request.at, knowledge.rules.weight)
  const drafts = request.lines
    .map((line) => identify(line, request, knowledge))
    .map((draft) => (draft.row ? weigh(draft, weight, request, knowledge) : draft))
  const judged = judgeTogether(drafts, request, knowledge)

  const lean = animal.weight && leanWeight(animal.weight, animal.bodyCondition, knowledge.rules.weight)
  const ceiling = judgeCeiling(judged.filter(isMeasurable), request, knowledge, lean)
  const lines = judged.map((draft) =>
    finish(add(draft, ceiling.findings.get(draft.line.id) ?? []), ceiling.down.has(draft.line.id), knowledge),
  )
  return {
    lines,
    ceilings: ceiling.ceiling ? [ceiling.ceiling] : [],
    findings: bySeverity([
      ...weight,
      ...judgeAge(animal, knowledge.rules),
      ...unknownGiven(request, knowledge),
      ...unknownPlan(request, knowledge),
    ]),
  }
}

function add(draft: Draft, findings: readonly DoseFinding[]): Draft {
  return { ...draft, findings: [...draft.findings, ...findings] }
}

/** Which drug, which row, whose dose; and everything that bars the row in this animal. */
function identify(asked: PlannedLine, request: DoseRequest, knowledge: DosingKnowledge): Draft {
  const drug = drugById(knowledge.drugs, asked.drug)
  if (!drug) {
    const near = nearNames(knowledge.drugs, asked.drug).join(', ') || 'none'
    return { line: asked, rows: [], findings: [found('block', 'drug-unknown', { drug: asked.drug, near })] }
  }
  const { species } = request.animal
  const choice = chooseDose({ ...asked, drug: drug.id }, request.plan, species, knowledge)
  const { line } = choice
  const dose = choice.kind === 'chosen' ? choice.dose : undefined
  const row = findRow(drug, species, line, dose)
  if (row.kind === 'refusal') {
    const { finding, rows } = row.refusal
    const more = choice.kind === 'not-chosen' ? choice.findings : []
    return { line, drug, rows, findings: [finding, ...more], ...(dose && { dose }) }
  }
  const { weight, bodyCondition } = request.animal
  // An amount given is read on the lean weight, on which it was dosed if the animal is fat.
  const lean = weight && leanWeight(weight, bodyCondition, knowledge.rules.weight)
  const excluded = judgeExclusions(drug, row.answer, request, knowledge.drugs, lean)
  const draft = { line, drug, row: row.answer, rows: [] }
  if (choice.kind === 'not-chosen') {
    return { ...draft, findings: [...choice.findings, notChosen(drug.name, row.answer), ...excluded] }
  }
  const range = judgeRange(drug.name, row.answer, choice.dose, knowledge.rules)
  return { ...draft, dose: choice.dose, chosenBy: choice.by, findings: [...excluded, ...range] }
}

/** The amount, on the weight that counts for this drug; refused when the weight is missing or impossible. */
function weigh(draft: Draft, weight: readonly DoseFinding[], request: DoseRequest, { rules }: DosingKnowledge): Draft {
  const { dose, drug, row } = draft
  if (!dose || !drug || !row) return draft
  const { animal } = request
  const needsWeight = !kindOf(dose).startsWith('flat') && kindOf(dose) !== 'infusion-flat'
  const blocked = weight.filter(isBlock)
  if (needsWeight && blocked.length > 0) return add(draft, blocked)
  if (!animal.weight) return { ...draft, amount: amountOf(dose, nobody) }

  const usesLean = usesLeanWeight(drug, row.use, rules)
  const counted = usesLean ? leanWeight(animal.weight, animal.bodyCondition, rules.weight) : animal.weight
  const surface = bodySurface(counted, rules.bodySurface[animal.species].value)
  const amount = amountOf(dose, { weight: counted, surface })
  const findings = [
    ...judgeSingle(drug.name, row, dose, amount),
    ...judgePatch(drug, row, amount, animal.weight, rules),
  ]
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
  if (needsWeight && weight.some((finding) => finding.level === 'confirm')) {
    findings.push(found('confirm', 'weight-unconfirmed', { weight: animal.weight.toString() }))
  }
  return add({ ...draft, amount, body: { weight: counted, surface } }, findings)
}

/** For doses that count per animal or per eye when nobody weighed: nothing is multiplied with it. */
const nobody: Body = { weight: new Quantity(new Decimal(1), 'kg'), surface: new Quantity(new Decimal(1), 'm2') }

/** What the lines mean for each other: drugs that must not meet, and the sum of a day. */
function judgeTogether(drafts: readonly Draft[], request: DoseRequest, knowledge: DosingKnowledge): Draft[] {
  const planned = drafts.flatMap((draft): Planned[] => (draft.drug ? [{ line: draft.line.id, drug: draft.drug }] : []))
  const masses = drafts.flatMap((draft): PlannedMass[] => {
    const mass = draft.amount && convert(draft.amount, 'mg')
    if (!mass || !draft.drug || !draft.row) return []
    return [{ line: draft.line.id, drug: draft.drug, row: draft.row, mass }]
  })
  return drafts.map((draft) => {
    const mine = planned.find((entry) => entry.line === draft.line.id)
    const mass = masses.find((entry) => entry.line === draft.line.id)
    const { weight } = request.animal
    return add(draft, [
      ...(mine ? judgeInteractions(mine, planned, request, knowledge.drugs, knowledge.rules.interactions) : []),
      ...(draft.drug && draft.row ? judgeRepeat(draft.drug, draft.row, request, knowledge) : []),
      ...(draft.drug ? judgeUnsettled(draft.drug, request, knowledge.drugs, knowledge.rules.interactions) : []),
      ...(mass && weight ? judgeDay(mass, masses, request, draft.body?.weight ?? weight, knowledge.drugs) : []),
    ])
  })
}

type Measurable = Draft & Required<Pick<Draft, 'drug' | 'row' | 'dose' | 'amount' | 'body'>>

function isMeasurable(draft: Draft): draft is Measurable {
  const { drug, row, dose, amount, body } = draft
  return Boolean(drug && row && dose && amount && body) && !draft.findings.some(isBlock)
}

/** The answer of one line. A refused line carries nothing that could be drawn up. */
function finish(draft: Draft, down: boolean, knowledge: DosingKnowledge): DoseLine {
  const { line, drug, row, dose, chosenBy, amount, rows } = draft
  const isOpen = !draft.findings.some(isBlock)
  const drawn =
    isOpen && amount && dose && drug && row ? drawDraft(draft, { drug, row, dose, amount }, down, knowledge) : undefined
  const findings = bySeverity([...draft.findings, ...(drawn?.findings ?? [])])
  const base = {
    id: line.id,
    drug: line.drug,
    use: line.use,
    ...(line.route && { route: line.route }),
    ...(dose && { dose }),
    ...(chosenBy && { chosenBy }),
    findings,
    rows,
    sources: sourcesOf(row),
    ...(row && { range: row.range.value, interval: row.interval.value.words }),
    cautions: row ? cautionsOf(row) : [],
    never: row?.neverByHand ?? [],
  }
  if (!drawn || !dose || !amount || findings.some(isBlock)) return { ...base, verdict: 'refused' }
  const { secondPersonGroups } = knowledge.rules
  const secondPerson = drug?.groups.some((group) => secondPersonGroups.value.includes(group)) ?? false
  const surface = kindOf(dose) === 'per-surface' && draft.body ? { bodySurface: draft.body.surface } : {}
  const weight = draft.body && kindOf(dose) !== 'flat' ? { dosingWeight: draft.body.weight } : {}
  const verdict = findings.length > 0 ? 'caution' : 'ok'
  return { ...base, verdict, dose, amount, secondPerson, ...weight, ...surface, ...drawn.measured }
}

function drawDraft(
  draft: Draft,
  known: Pick<Drawing, 'drug' | 'row' | 'dose' | 'amount'>,
  down: boolean,
  { rules, syringes }: DosingKnowledge,
) {
  const body = draft.body ?? nobody
  return draw({ ...known, line: draft.line, body, rules, down, ...(syringes && { syringes }) })
}

/** What is always said with this row, the most that may be given in all included. */
function cautionsOf(row: DoseRow): string[] {
  const always = row.cautions.value.filter((caution) => !caution.when).map((caution) => caution.words)
  return row.maxCumulative ? [...always, `in all: ${row.maxCumulative.value.words}`] : always
}

function sourcesOf(row: DoseRow | undefined): Provenance[] {
  return row ? [row.range, ...(row.otherRanges ?? []), ...(row.maxSingle ? [row.maxSingle] : [])] : []
}

/** What was given without a time counts in full; what is no drug of ours counts in nothing. Both are said. */
function unknownGiven(request: DoseRequest, { drugs }: DosingKnowledge): DoseFinding[] {
  const timeless = request.given
    .filter((given) => (!given.at || !request.at) && drugsGiven(drugs, given.drug).length > 0)
    .map((given) => found('note', 'given-time-unknown', { drug: given.drug }))
  const unknown = request.given
    .filter((given) => !given.unsettled && !drugById(drugs, given.drug))
    .map((given) => {
      const read = drugsGiven(drugs, given.drug).map(({ name }) => name)
      if (read.length > 0) {
        return found('confirm', 'given-drug-read-as', { given: saidOf(given), read: read.join(' and ') })
      }
      const near = nearNames(drugs, given.drug).join(', ') || 'none'
      return found('confirm', 'given-drug-unknown', { given: saidOf(given), near })
    })
  return [...unknown, ...timeless]
}

function unknownPlan(request: DoseRequest, { plans }: DosingKnowledge): DoseFinding[] {
  if (request.plan === undefined || plans.some((plan) => plan.name === request.plan)) return []
  const names = plans.map((plan) => plan.name).join(', ') || 'none'
  return [found('block', 'plan-unknown', { plan: request.plan, plans: names })]
}
