import { Temporal } from 'temporal-polyfill'
import type { CaseFile } from '#core/journal/clinic.ts'
import { operationsOf } from '#core/owed/operations.ts'
import { Decimal, Quantity } from '#core/units/quantity.ts'
import { dosedAnimalOf, givenOf } from './from-journal.ts'
import { givenParts, one, shareOf, sumOf } from './local-anaesthetic.ts'
import { planNow } from './plan-now.ts'
import type { DosingKnowledge } from './request.ts'
import { leanWeight } from './weight.ts'

/** What the animal's one limit for local anaesthetics leaves. */
export type LocalRoom = {
  /** The share that was given and has not worn off, infusions too, and what is planned for an operation still to come. */
  readonly taken: Decimal
  /** A local anaesthetic was given of which nobody wrote the milligrams: what is left may be less. */
  readonly uncounted: boolean
  /** Of each drug that counts; never below nothing. */
  readonly left: ReadonlyMap<string, Quantity<'mg'>>
}

/**
 * The room that blocks leave at an instant, for a sheet that is never silenced: a note beside a bolus, not a bar.
 * Undefined without species or weight. Counted on the lean weight of a fat animal, as the ceiling of a plan is.
 *
 * @example localRoomOf(file, '2026-03-10T10:00:00.000Z', knowledge)?.left.get('lidocaine') // 16.4 mg
 */
export function localRoomOf(file: CaseFile, at: string, knowledge: DosingKnowledge): LocalRoom | undefined {
  const animal = dosedAnimalOf(file.theCase, at, knowledge.rules)
  if (!animal?.weight) return undefined
  const { species } = animal
  const weight = leanWeight(animal.weight, animal.bodyCondition, knowledge.rules.weight)
  const request = { animal, given: givenOf(file.theCase, at), at: Temporal.Instant.from(at), lines: [] }
  const { parts, uncounted } = givenParts(request, knowledge.drugs, weight)
  const taken = sumOf(parts, () => true).plus(plannedIn(file, at, knowledge))
  const room = Decimal.max(0, one.minus(taken))
  const left = new Map<string, Quantity<'mg'>>()
  for (const drug of knowledge.drugs) {
    const whole = shareOf(drug, species, new Quantity(new Decimal(0), 'mg'), weight)
    if (whole) left.set(drug.id, new Quantity(whole.limit.value.times(room), 'mg'))
  }
  return { taken, uncounted: uncounted.length > 0, left }
}

/** What waits for the next operation and the others of its day; of an operation that is over nothing waits. */
function plannedIn(file: CaseFile, at: string, knowledge: DosingKnowledge): Decimal {
  const next = operationsOf(file).find(({ done }) => done === null)
  const [ceiling] = next ? planNow(file, next, at, knowledge).ceilings : []
  return sumOf(ceiling?.parts ?? [], ({ kind, line, counted }) => kind !== 'given' && line !== undefined && counted)
}
