import type { Species } from '#core/animal/species.ts'
import type { Dose, DoseRange, DoseRow } from '#core/formulary/drug.ts'
import { convert, type Decimal, plain } from '#core/units/quantity.ts'
import { type DoseFinding, found } from './findings.ts'
import type { UsualPlanLine } from './plan.ts'
import type { ChosenBy, DosingKnowledge, PlannedLine } from './request.ts'
import { isFormulation } from './row.ts'
import type { DosingRules } from './rules.ts'

export type Choice =
  | { readonly kind: 'chosen'; readonly line: PlannedLine; readonly dose: Dose; readonly by: ChosenBy }
  | { readonly kind: 'not-chosen'; readonly line: PlannedLine; readonly findings: readonly DoseFinding[] }

/**
 * Who chose this line's dose: the person asking, the named plan, or the house policy, in that order.
 * Nobody else can: without one of them the dose stays unchosen.
 *
 * @example chooseDose(line, undefined, 'dog', { plans: [], policies: [] }).kind // 'not-chosen'
 */
export function chooseDose(
  line: PlannedLine,
  planName: string | undefined,
  species: Species,
  knowledge: Pick<DosingKnowledge, 'plans' | 'policies'>,
): Choice {
  if (line.dose) return { kind: 'chosen', line, dose: line.dose, by: { kind: 'person' } }
  const name = line.plan ?? planName
  const planned = name === undefined ? undefined : fromPlan(line, name, species, knowledge)
  if (planned?.kind === 'chosen' || planned?.findings.length) return planned
  const fitting = knowledge.policies.filter((entry) => entry.species === species && fits(entry, line))
  const [policy, ...others] = closest(fitting, line)
  if (!policy) return { kind: 'not-chosen', line, findings: [] }
  if (others.length > 0) return ambiguous(line, [policy, ...others])
  const { reason, person, date, dose } = policy
  return { kind: 'chosen', line: filled(line, policy), dose, by: { kind: 'policy', reason, person, date } }
}

function fromPlan(
  line: PlannedLine,
  name: string,
  species: Species,
  knowledge: Pick<DosingKnowledge, 'plans'>,
): Choice {
  const called = knowledge.plans.filter((entry) => entry.name === name)
  const [plan] = called
  if (!plan) {
    const plans = knowledge.plans.map((entry) => `"${entry.name}"`).join(', ') || 'none'
    return { kind: 'not-chosen', line, findings: [found('block', 'plan-unknown', { plan: name, plans })] }
  }
  const mine = called.filter((entry) => entry.species === species)
  if (mine.length === 0) {
    const about = { plan: name, species, other: plan.species }
    return { kind: 'not-chosen', line, findings: [found('block', 'plan-for-other-species', about)] }
  }
  // Two live plans of one name are a conflict that nobody settled; taking the first would be a guess.
  const fitting = mine.flatMap(({ lines }) => lines).filter((entry) => fits(entry, line))
  const named = fitting.filter(({ id }) => id === line.id)
  const [chosen, ...others] = closest(named.length > 0 ? named : fitting, line)
  if (!chosen) return { kind: 'not-chosen', line, findings: [] }
  if (others.length > 0) return ambiguous(line, [chosen, ...others])
  const { reason, person, date, dose } = chosen
  const whole = { ...filled(line, chosen), ...missing(line, chosen) }
  return { kind: 'chosen', line: whole, dose, by: { kind: 'plan', plan: name, reason, person, date } }
}

type Words = Pick<PlannedLine, 'drug' | 'use' | 'route' | 'qualifier' | 'formulation'>

function fits(entry: Words, line: Words): boolean {
  return (
    entry.drug === line.drug &&
    entry.use === line.use &&
    (line.route === undefined || entry.route === undefined || entry.route === line.route) &&
    (line.qualifier === undefined || entry.qualifier === undefined || entry.qualifier === line.qualifier) &&
    // A formulation of its own is never reached by accident: both name it, or neither does.
    isFormulation(entry.formulation, line.formulation)
  )
}

/**
 * Of the choices that fit, those that say as much as the line says: a dose for the muscle before a dose for every route
 * when the line names the muscle, the other way round when it names none. Choices that mean the same are one.
 */
function closest<Entry extends Words & { readonly dose: Dose }>(entries: readonly Entry[], line: Words): Entry[] {
  const alike = ({ route, qualifier }: Words) => Number(route === line.route) + Number(qualifier === line.qualifier)
  const most = Math.max(0, ...entries.map(alike))
  const near = entries.filter((entry) => alike(entry) === most)
  return near.filter((entry, place) => near.findIndex((other) => meaning(other) === meaning(entry)) === place)
}

function meaning({ dose, route, qualifier }: Words & { readonly dose: Dose }): string {
  const by = [route, qualifier].filter(Boolean).join(', ')
  return `${dose}${by && ` (${by})`}`
}

function ambiguous(line: PlannedLine, entries: readonly (Words & { readonly dose: Dose })[]): Choice {
  const about = { drug: line.drug, use: line.use, choices: entries.map(meaning).join('; ') }
  return { kind: 'not-chosen', line, findings: [found('block', 'choice-ambiguous', about)] }
}

function filled(line: PlannedLine, entry: Pick<PlannedLine, 'route' | 'qualifier' | 'formulation'>): PlannedLine {
  const route = line.route ?? entry.route
  const qualifier = line.qualifier ?? entry.qualifier
  const formulation = line.formulation ?? entry.formulation
  return { ...line, ...(route && { route }), ...(qualifier && { qualifier }), ...(formulation && { formulation }) }
}

/** What the plan says and the question does not. A strength in hand goes before that of the plan. */
function missing(line: PlannedLine, entry: UsualPlanLine): Partial<PlannedLine> {
  const { stock, tablet, over, days, every, container, loading, mark, xylitolFree, set, mixed } = entry
  const inHand = line.stock || line.tablet
  const said = {
    over,
    days,
    every,
    container,
    loading,
    mark,
    xylitolFree,
    set,
    ...(inHand ? {} : { stock, tablet, mixed }),
  }
  const unsaid = Object.entries(said).filter(
    ([name, value]) => value !== undefined && line[name as keyof PlannedLine] === undefined,
  )
  return Object.fromEntries(unsaid)
}

/** The chosen dose against the row's range, converted exactly into the row's unit first. */
export function judgeRange(drug: string, row: DoseRow, dose: Dose, rules: DosingRules): DoseFinding[] {
  const { low, high } = row.range.value
  const inUnit = convert(dose, low.unit)
  if (!inUnit) throw new Error(`${dose.toString()} does not fit a row in ${low.unit}.`)
  const from = [row.range]
  // A dose worked back from milligrams may have no end of figures.
  const shown = `${plain(dose.value.toSignificantDigits(6))} ${dose.unit}`
  const about = { drug, dose: shown, low: low.toString(), high: high.toString() }
  // The commonest slip of an infusion: the number of the range with the other time is sixtyfold off.
  const isOtherTime = dose.unit !== low.unit && withoutTime(dose.unit) === withoutTime(low.unit)
  if (isOtherTime && dose.value.gte(low.value) && dose.value.lte(high.value)) {
    return [found('block', 'dose-time-suspected', about, from)]
  }
  if (inUnit.value.lt(low.value)) {
    // A microgram written for a milligram harms too: the pain stays, the infection stays.
    const isFar = inUnit.value.times(rules.overRange.value.unitSlip).lte(low.value)
    return [
      isFar
        ? found('block', 'dose-unit-suspected-low', about, [...from, rules.overRange])
        : found('note', 'dose-below-range', about, from),
    ]
  }
  if (inUnit.value.lte(high.value)) return []
  const factor = inUnit.value.div(high.value)
  const reaching = (row.otherRanges ?? []).filter(({ value }) => convert(value.high, low.unit)?.value.gte(inUnit.value))
  const others = reaching.map(({ value }) => said(value)).join('; ') || 'none'
  const times = { ...about, others, factor: plain(factor.toDecimalPlaces(1)) }
  const { confirm, block, unitSlip } = rules.overRange.value
  const both = [...from, ...reaching, rules.overRange]
  if (atLeast(factor, unitSlip)) return [found('block', 'dose-unit-suspected', times, both)]
  if (atLeast(factor, block)) return [found('block', 'dose-five-times-range', times, both)]
  if (atLeast(factor, confirm)) return [found('confirm', 'dose-twice-range', times, both)]
  return [found('note', 'dose-above-range', times, both)]
}

function withoutTime(unit: Dose['unit']): string {
  return unit.replace(/\/(h|min)$/, '')
}

function atLeast(factor: Decimal, limit: Decimal): boolean {
  return factor.gte(limit)
}

function said(value: DoseRange & { readonly words?: string }): string {
  return `${value.low} to ${value.high}${value.words ? ` (${value.words})` : ''}`
}

/** What is said when nobody chose: the range, its sources, and the ranges of those who disagree. */
export function notChosen(drug: string, row: DoseRow): DoseFinding {
  const { low, high } = row.range.value
  const others = (row.otherRanges ?? []).map(({ value }) => said(value))
  const about = { drug, low: low.toString(), high: high.toString(), others: others.join('; ') || 'none' }
  return found('block', 'dose-not-chosen', about, [row.range, ...(row.otherRanges ?? [])])
}
