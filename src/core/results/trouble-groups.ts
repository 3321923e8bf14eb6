import type { ProcedureId } from '#core/animal/procedure.ts'
import type { Species } from '#core/animal/species.ts'
import { type Graded, gradeBy } from '#core/complications/grade.ts'
import { knownFromDay, lookedFromDay, type TroubleRules } from '#core/complications/rules.ts'
import type { Scheme } from '#core/complications/scheme.ts'
import { classOf } from '#core/complications/standing.ts'
import type { TroubleFacts } from '#core/complications/trouble.ts'
import type { TroubleClass, TroubleEvent } from '#core/complications/trouble-codes.ts'
import type { OperatedEar } from '#core/evidence/own/operated-ear.ts'
import { addDays } from '#core/time/calendar-day.ts'

export type TroubleUnit = 'ear' | 'animal'

export type TroubleQuestion = {
  readonly species: Species
  readonly procedure: ProcedureId
  readonly unit: TroubleUnit
}

/** One ear, or one animal with all its ears that were operated so. */
export type TroubleGroup = {
  readonly ears: readonly [OperatedEar, ...OperatedEar[]]
  readonly troubles: readonly (TroubleFacts & { operated: string })[]
}

/** Where an ear or animal stands in the count of one kind of trouble. */
export const eventStandings = ['events', 'free', 'before', 'lost', 'lost-before', 'early', 'notYetDue'] as const
export type EventStanding = (typeof eventStandings)[number]

/** What it is held for; what was there before is no event. */
type Held = Exclude<TroubleClass, 'was-there-before'> | null

/**
 * The ears of one operation in one species, or the animals. An ear has only its own trouble; an animal has that of its
 * ears and of itself.
 */
export function troubleGroups(
  { species, procedure, unit }: TroubleQuestion,
  all: readonly OperatedEar[],
): TroubleGroup[] {
  const keys = new Map<string, [OperatedEar, ...OperatedEar[]]>()
  for (const ear of all) {
    if (ear.species !== species || ear.procedure !== procedure) continue
    const key = unit === 'ear' ? ear.operation : ear.animal
    const some = keys.get(key)
    if (some) some.push(ear)
    else keys.set(key, [ear])
  }
  return [...keys.values()].map((ears) => ({
    ears,
    troubles: ears.flatMap(({ troubles, on }) =>
      troubles.filter((one) => unit === 'animal' || one.unit === 'ear').map((one) => ({ ...one, operated: on })),
    ),
  }))
}

export function isDue({ ears }: TroubleGroup, days: number, today: string): boolean {
  return ears.every(({ on }) => addDays(on, days) <= today)
}

/** Somebody knew how every one of its ears was so long after; silence is never "without". */
function isFollowed({ ears }: TroubleGroup, days: number): boolean {
  return ears.every(({ on, followedUntil }) => followedUntil !== null && followedUntil >= addDays(on, days))
}

/** Every one of its ears is known to be without it. Of a deep infection it is what our own count of the ear says, and no other rule. */
function isWithout(event: TroubleEvent, group: TroubleGroup, rules: TroubleRules): boolean {
  if (event === 'deep-infection') return group.ears.every(({ known }) => known.deep_recurrence === false)
  return isFollowed(group, lookedFromDay(event, rules))
}

/** It had trouble that was not there before, or somebody knew how it was so long after. */
export function isKnown(group: TroubleGroup, days: number): boolean {
  return group.troubles.some((one) => classOf(one) !== 'was-there-before') || isFollowed(group, days)
}

/**
 * Where a group stands in the count of one kind of trouble, and what its events of that kind are held for.
 *
 * @example standingIn('wound-gap', group, { rules, today }).standing // 'events'
 */
export function standingIn(
  event: TroubleEvent,
  group: TroubleGroup,
  { rules, today }: { readonly rules: TroubleRules; readonly today: string },
): { readonly standing: EventStanding; readonly held: readonly Held[] } {
  const days = knownFromDay(event, rules)
  const all = group.troubles.filter((trouble) => trouble.event === event).map(classOf)
  const held = all.flatMap((one) => (one === 'was-there-before' ? [] : [one]))
  const before = all.length > held.length
  if (!isDue(group, days, today)) return { standing: held.length > 0 ? 'early' : 'notYetDue', held }
  if (held.length > 0) return { standing: 'events', held }
  if (isWithout(event, group, rules)) return { standing: before ? 'before' : 'free', held }
  return { standing: before ? 'lost-before' : 'lost', held }
}

/** Its worst grade by a scheme for certain; `between` where one that fits several may be worse; null where none is graded. */
export function worstGrade(scheme: Scheme, { troubles }: TroubleGroup): string | null {
  return worstOf(
    scheme.grades.map(({ grade }) => grade),
    troubles.map((trouble) => gradeBy(scheme, trouble)),
  )
}

function worstOf(order: readonly string[], graded: readonly Graded[]): string | null {
  const sure = Math.max(-1, ...graded.map((one) => (one.kind === 'graded' ? order.indexOf(one.grade) : -1)))
  const may = Math.max(
    -1,
    ...graded.flatMap((one) => (one.kind === 'between' ? one.grades.map((grade) => order.indexOf(grade)) : [])),
  )
  if (may > sure) return 'between'
  if (sure >= 0) return order[sure] ?? null
  return graded.some(({ kind }) => kind === 'unknown') ? 'unknown' : null
}
