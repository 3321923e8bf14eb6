import type { Species } from '#core/animal/species.ts'
import { readText } from '#core/forms/read-leaf.ts'
import { typedAgain } from '#core/forms/typed-again.ts'
import { type DoseRow, rowKey } from '#core/formulary/drug.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import type { HowGiven } from '#core/journal/how-given.ts'
import { answer, type Outcome, refuse } from '#core/outcome/outcome.ts'
import { type Unit, units } from '#core/units/unit.ts'
import { readHow, storedHow } from './how-given.ts'
import { type ChosenDraft, type ChosenRefusal, readChosen, rowsFor } from './read-chosen.ts'
import { draftOfHow, type HowDraft, type HowRefusal, questionsOf, readHowDraft } from './read-how.ts'
import { isFormulation } from './row.ts'

type Facts = Omit<Parameters<typeof readChosen>[1], 'species'>
type Plan = BodyOf<'usual-plan'>

/** One line of a plan while it is being written; `key` only tells lines apart on the screen. */
export type LineDraft = ChosenDraft &
  HowDraft & { readonly key: string; readonly line: string; readonly shelfItem: string }

/** A usual plan while it is being written. An empty text is "not answered yet"; nothing is filled in. */
export type PlanDraft = {
  readonly plan: string
  readonly species: '' | Species
  readonly lines: readonly LineDraft[]
}

export type PlanRefusal =
  | { readonly at: 'plan'; readonly because: 'not-written' | 'too-long' | 'taken' }
  | { readonly at: 'species' | 'lines'; readonly because: 'not-chosen' }
  | { readonly at: 'line'; readonly line: string; readonly because: 'not-written' | 'too-long' | 'twice' }
  | { readonly at: 'chosen'; readonly line: string; readonly refusal: ChosenRefusal }
  | { readonly at: 'how'; readonly line: string; readonly refusal: HowRefusal }

/**
 * The plan that a draft stands for, or everything that is missing, in the order of the page. `taken` are the names of
 * the other plans: two live plans of one name would be a conflict.
 *
 * @example readPlan({ plan: 'our usual plan, dog', species: 'dog', lines: [block] }, facts, [])
 */
export function readPlan(
  draft: PlanDraft,
  facts: Facts,
  taken: readonly string[],
): Outcome<Plan, readonly PlanRefusal[]> {
  const refusals: PlanRefusal[] = []
  const plan = readText(draft.plan, 300)
  if (plan.kind === 'refusal') refusals.push({ at: 'plan', because: lengthOf(plan.refusal.because) })
  else if (taken.includes(String(plan.answer))) refusals.push({ at: 'plan', because: 'taken' })
  if (draft.species === '') refusals.push({ at: 'species', because: 'not-chosen' })
  if (draft.lines.length === 0) refusals.push({ at: 'lines', because: 'not-chosen' })
  const lines = draft.lines.flatMap((line) => readLine(line, draft, facts, refusals))
  if (refusals.length > 0 || plan.kind === 'refusal' || draft.species === '') return refuse(refusals)
  return answer({ plan: String(plan.answer), species: draft.species, lines })
}

function readLine(
  line: LineDraft,
  { species, lines }: PlanDraft,
  facts: Facts,
  refusals: PlanRefusal[],
): Plan['lines'] {
  const name = readText(line.line, 80)
  if (name.kind === 'refusal') {
    refusals.push({ at: 'line', line: line.key, because: lengthOf(name.refusal.because) })
  } else if (lines.some((other) => other.key !== line.key && other.line.trim() === name.answer)) {
    refusals.push({ at: 'line', line: line.key, because: 'twice' })
  }
  if (species === '') return []
  const chosen = readChosen(line, { ...facts, species })
  const how = howOf(line, species, facts)
  if (chosen.kind === 'refusal')
    refusals.push(...chosen.refusal.map((refusal) => ({ at: 'chosen', line: line.key, refusal }) as const))
  if (how.kind === 'refusal')
    refusals.push(...how.refusal.map((refusal) => ({ at: 'how', line: line.key, refusal }) as const))
  if (chosen.kind === 'refusal' || how.kind === 'refusal') return []
  const shelfItem = line.shelfItem === '' ? null : line.shelfItem
  const called = name.kind === 'answer' ? String(name.answer) : ''
  return [{ ...chosen.answer, line: called, shelfItem, how: storedHow(how.answer) }]
}

function howOf(line: LineDraft, species: Species, { drugs, decimalMark }: Facts) {
  const drug = drugs.find(({ id }) => id === line.drug)
  const row = rowsFor(drug, species).find((one) => rowKey(one) === line.row)
  if (!drug || !row) return answer({})
  return readHowDraft(line, row, questionsOf(drug, row, false), { decimalMark, line: line.line.trim() })
}

function lengthOf(because: string): 'not-written' | 'too-long' {
  return because === 'too-long' ? 'too-long' : 'not-written'
}

/**
 * The row of the formulary behind a chosen dose: same use, route, bracket and formulation, a unit of the same kind; undefined when
 * the formulary has none (any more).
 *
 * @example rowBehind({ drug: 'bupivacaine', use: 'local_block', route: 'infiltration', … }, 'dog', formulary)
 */
export function rowBehind(
  chosen: {
    readonly drug: string
    readonly use: string
    readonly route: string | null
    readonly qualifier: string | null
    readonly dose: { readonly unit: Unit }
    /** A policy names no formulation, and an older line says nothing of how it is given. */
    readonly how?: Pick<HowGiven, 'formulation'> | null
  },
  species: Species,
  drugs: Facts['drugs'],
): DoseRow | undefined {
  const { drug, use, route, qualifier, dose, how } = chosen
  const kindOf = (unit: Unit) => units[unit].dimension
  return rowsFor(
    drugs.find(({ id }) => id === drug),
    species,
  ).find(
    (row) =>
      row.use === use &&
      (route === null || row.routes.some((one) => one === route)) &&
      (qualifier === null || row.qualifier === qualifier) &&
      isFormulation(row.formulation, how?.formulation ?? undefined) &&
      kindOf(row.range.value.low.unit) === kindOf(dose.unit),
  )
}

/** The draft of a plan that is to be changed: every answer as a person would have typed it. */
export function planDraftOf(plan: Plan, facts: Pick<Facts, 'drugs' | 'decimalMark'>): PlanDraft {
  const lines = plan.lines.map((line, index) => {
    const row = rowBehind(line, plan.species, facts.drugs)
    return {
      key: `${index}`,
      line: line.line,
      drug: line.drug,
      row: row ? rowKey(row) : '',
      route: line.route,
      dose: typedAgain(line.dose, facts.decimalMark),
      because: line.because,
      shelfItem: line.shelfItem ?? '',
      ...draftOfHow(readHow(line.how), line.line, facts),
    }
  })
  return { plan: plan.plan, species: plan.species, lines }
}
