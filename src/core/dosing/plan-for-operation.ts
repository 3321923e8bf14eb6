import type { Species } from '#core/animal/species.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import { answer, type Outcome, refuse } from '#core/outcome/outcome.ts'
import { operationsOf } from '#core/owed/operations.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import type { Quantity } from '#core/units/quantity.ts'
import { type DoseResult, doseLines } from './dose-lines.ts'
import { linesOfOperation, linesOfPlan } from './from-journal.ts'
import type { UsualPlan, UsualPlanLine } from './plan.ts'
import type { DoseLine, DosingKnowledge, PlannedLine } from './request.ts'
import { requestOfCase } from './request-of-case.ts'

export type PlanRefusal =
  | { readonly because: 'animal-unknown' }
  | { readonly because: 'plan-unknown' }
  /** Two live versions that nobody has settled: taking one of them would be a guess. */
  | { readonly because: 'plan-stands-twice' }
  | { readonly because: 'plan-for-other-species'; readonly species: Species; readonly other: Species }

/** One line of the plan as it is judged for this animal, and how it stands to what is planned already. */
export type JudgedPlanLine = {
  readonly line: DoseLine
  readonly asked: PlannedLine
  readonly chosen: UsualPlanLine
  /** The live entry that already plans a line of this name for this operation. */
  readonly already: Line<BodyOf<'planned-line'>> | null
}

export type JudgedPlan = {
  readonly plan: UsualPlan
  readonly lines: readonly JudgedPlanLine[]
  readonly weight: Quantity<'kg'> | null
  readonly findings: DoseResult['findings']
  readonly ceilings: DoseResult['ceilings']
}

type Asked = { readonly operation: string; readonly plan: string; readonly at: string }

/**
 * One of the house's usual plans judged for one operation of this animal: together with what is planned already for it
 * and for any other operation of the same day, because a ceiling belongs to the animal. Picks no dose: each stands in
 * the plan with the person who chose it.
 *
 * @example planForOperation(file, { operation, plan: 'our usual plan, dog', at }, knowledge)
 */
export function planForOperation(
  file: CaseFile,
  { operation, plan: name, at }: Asked,
  knowledge: DosingKnowledge,
): Outcome<JudgedPlan, PlanRefusal> {
  const question = requestOfCase(file, { operation, at }, [], knowledge.rules)
  if (!question) return refuse({ because: 'animal-unknown' })
  const { animal } = question
  const [plan, second] = knowledge.plans.filter((one) => one.name === name)
  if (!plan) return refuse({ because: 'plan-unknown' })
  if (second) return refuse({ because: 'plan-stands-twice' })
  if (plan.species !== animal.species)
    return refuse({ because: 'plan-for-other-species', species: animal.species, other: plan.species })

  const already = new Map(linesAbout(file.theCase, 'planned-line', operation).map((line) => [line.body.line, line]))
  const asked = linesOfPlan(plan)
  const fresh = asked.filter(({ id }) => !already.has(id))
  const judge = (lines: readonly PlannedLine[]) => doseLines({ ...question, lines }, knowledge)
  // What stands comes first: the line that would pass a ceiling is the one that is added.
  const result = judge([...standing(file, operation), ...fresh])
  // A line that is planned already is shown as the plan has it, judged by itself: it is not written a second time.
  const alone = judge(asked.filter(({ id }) => already.has(id)))
  const judged = new Map([...result.lines, ...alone.lines].map((line) => [line.id, line]))
  const lines = plan.lines.flatMap((chosen): JudgedPlanLine[] => {
    const line = judged.get(chosen.id)
    const one = asked.find(({ id }) => id === chosen.id)
    return line && one ? [{ line, asked: one, chosen, already: already.get(chosen.id) ?? null }] : []
  })
  const { findings, ceilings } = result
  return answer({ plan, lines, weight: animal.weight ?? null, findings, ceilings })
}

/** The planned lines of the day that still wait to be given; what was given is counted as given. */
function standing(file: CaseFile, operation: string): PlannedLine[] {
  return sameDay(file, operation).flatMap((one) => waitingNamed(file, one))
}

/** The planned lines of one operation that nobody has written down as given. */
export function waitingOf({ theCase }: CaseFile, operation: string): PlannedLine[] {
  const done = linesAbout(theCase, 'drug-given', operation)
  return linesOfOperation(theCase, operation).lines.filter(
    (line) => !done.some(({ body }) => body.line === line.id && body.drug === line.drug),
  )
}

/**
 * What waits for the other operations of the same day, in their order. It is the same order from wherever one looks:
 * what the page of the one ear grants is never granted once more on the page of the other.
 */
export function waitingElsewhere(
  file: CaseFile,
  operation: string,
): { readonly before: readonly PlannedLine[]; readonly after: readonly PlannedLine[] } {
  const others = new Set(sameDay(file, operation))
  const all = operationsOf(file).map(({ id }) => id)
  const place = all.indexOf(operation)
  const waiting = (ids: readonly string[]) =>
    ids.filter((id) => id !== operation && others.has(id)).flatMap((id) => waitingNamed(file, id))
  return { before: waiting(all.slice(0, Math.max(0, place))), after: waiting(all.slice(place + 1)) }
}

/** Lines of two operations may have one name; here each has its operation before it. */
function waitingNamed(file: CaseFile, operation: string): PlannedLine[] {
  return waitingOf(file, operation).map((line) => ({ ...line, id: `${operation} ${line.id}` }))
}

/** This operation and the others that are not done and stand on its day: both ears in one session share a ceiling. */
function sameDay(file: CaseFile, operation: string): string[] {
  const all = operationsOf(file)
  const own = all.find(({ id }) => id === operation)
  const day = own && dayOf(own.moment)
  const others = all.filter(({ id, done, moment }) => id !== operation && done === null && dayOf(moment) === day)
  return [operation, ...others.map(({ id }) => id)]
}
