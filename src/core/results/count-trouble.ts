import type { ProcedureId } from '#core/animal/procedure.ts'
import type { Species } from '#core/animal/species.ts'
import { type Graded, gradeBy } from '#core/complications/grade.ts'
import { knownFromDay, type TroubleRules } from '#core/complications/rules.ts'
import type { Scheme, SchemeId, TroubleWindow } from '#core/complications/scheme.ts'
import { classOf } from '#core/complications/standing.ts'
import type { TroubleFacts } from '#core/complications/trouble.ts'
import {
  type TroubleClass,
  type TroubleEvent,
  troubleClasses,
  troubleEvents,
} from '#core/complications/trouble-codes.ts'
import { windowOf } from '#core/complications/windows.ts'
import type { OperatedEar } from '#core/evidence/own/operated-ear.ts'
import { addDays } from '#core/time/calendar-day.ts'

export type TroubleUnit = 'ear' | 'animal'

/** How many are due, and of how many it is known. */
export type Denominators = {
  /** Operated long enough ago to know. */
  readonly operated: number
  /** Of those: had it, or somebody knew how they were so long after. */
  readonly followed: number
  readonly notYetDue: number
}

/** One kind of trouble among ears, or among animals. What was there before is no event. */
export type EventCount = Denominators & {
  readonly event: TroubleEvent
  readonly events: number
  /** Of the events, by what a person decided; each once, by its worst. */
  readonly classes: Readonly<Record<Exclude<TroubleClass, 'was-there-before'> | 'not-decided', number>>
  /** Left out: there before and no worse. */
  readonly before: number
  /** Not yet due, and had it already. */
  readonly early: number
}

/** The worst complication of each ear or animal by one scheme. */
export type SchemeCount = {
  readonly scheme: SchemeId
  readonly grades: readonly { readonly grade: string; readonly count: number }[]
  /** Its worst fits more than one grade. */
  readonly between: number
  /** It has one that cannot be graded, and none that can. */
  readonly unknown: number
}

export type TroubleCount = Denominators & {
  readonly unit: TroubleUnit
  readonly events: readonly EventCount[]
  readonly schemes: readonly SchemeCount[]
  /** Troubles that are not held for something that was there before, by when they were first noticed. */
  readonly windows: readonly { readonly window: TroubleWindow['id']; readonly count: number }[]
}

export type TroubleQuestion = {
  readonly species: Species
  readonly procedure: ProcedureId
  readonly unit: TroubleUnit
}

type With = {
  readonly today: string
  readonly rules: TroubleRules
  readonly schemes: readonly Scheme[]
  readonly windows: readonly TroubleWindow[]
}

/** One ear, or one animal with all its ears that were operated so. */
type Group = {
  readonly ears: readonly OperatedEar[]
  readonly troubles: readonly (TroubleFacts & { operated: string })[]
}

/**
 * Counts every kind of trouble among the ears of one operation in one species, or among the animals. An ear has only
 * its own trouble; an animal has that of its ears and of itself.
 *
 * @example countTrouble({ species: 'dog', procedure: 'teca-lbo', unit: 'ear' }, ears, { today, rules, schemes, windows })
 */
export function countTrouble(question: TroubleQuestion, ears: readonly OperatedEar[], how: With): TroubleCount {
  const groups = groupsOf(question, ears)
  const due = groups.filter((group) => isDue(group, how.rules.early.value, how.today))
  const had = due.flatMap(({ troubles }) => troubles.filter((one) => classOf(one) !== 'was-there-before'))
  return {
    unit: question.unit,
    operated: due.length,
    followed: due.filter((group) => hasTrouble(group) || isFollowed(group, how.rules.early.value)).length,
    notYetDue: groups.length - due.length,
    events: troubleEvents.flatMap((event) => {
      const count = countEvent(event, groups, how)
      return count.events + count.before + count.early > 0 ? [count] : []
    }),
    schemes: how.schemes.map((scheme) => countScheme(scheme, due)),
    windows: how.windows.map(({ id }) => ({
      window: id,
      count: had.filter(({ operated, on }) => windowOf(operated, on, how.windows) === id).length,
    })),
  }
}

function groupsOf({ species, procedure, unit }: TroubleQuestion, all: readonly OperatedEar[]): Group[] {
  const ears = all.filter((ear) => ear.species === species && ear.procedure === procedure)
  const keys = new Map<string, OperatedEar[]>()
  for (const ear of ears) {
    const key = unit === 'ear' ? ear.operation : ear.animal
    keys.set(key, [...(keys.get(key) ?? []), ear])
  }
  return [...keys.values()].map((some) => ({
    ears: some,
    troubles: some.flatMap(({ troubles, on }) =>
      troubles.filter((one) => unit === 'animal' || one.unit === 'ear').map((one) => ({ ...one, operated: on })),
    ),
  }))
}

function isDue({ ears }: Group, days: number, today: string): boolean {
  return ears.every(({ on }) => addDays(on, days) <= today)
}

/** Somebody knew how every one of its ears was so long after; silence is never "without". */
function isFollowed({ ears }: Group, days: number): boolean {
  return ears.every(({ on, followedUntil }) => followedUntil !== null && followedUntil >= addDays(on, days))
}

function hasTrouble({ troubles }: Group): boolean {
  return troubles.some((one) => classOf(one) !== 'was-there-before')
}

function countEvent(event: TroubleEvent, groups: readonly Group[], { rules, today }: With): EventCount {
  const days = knownFromDay(event, rules)
  const stands = groups.map((group) => {
    const of = group.troubles.filter((trouble) => trouble.event === event)
    const held = of.map(classOf)
    const counted = held.flatMap((one) => (one === 'was-there-before' ? [] : [one]))
    return { group, due: isDue(group, days, today), counted, before: held.length > 0 && counted.length === 0 }
  })
  const due = stands.filter((one) => one.due)
  const had = due.filter(({ counted }) => counted.length > 0)
  const worst = had.map(
    ({ counted }) =>
      [...troubleClasses, null].find((one) => one !== 'was-there-before' && counted.includes(one)) ?? null,
  )
  const of = (one: TroubleClass | null) => worst.filter((held) => held === one).length
  return {
    event,
    operated: due.length,
    followed: due.filter(({ group, counted }) => counted.length > 0 || isFollowed(group, days)).length,
    notYetDue: stands.length - due.length,
    events: had.length,
    classes: {
      complication: of('complication'),
      sequela: of('sequela'),
      'failure-to-cure': of('failure-to-cure'),
      'not-decided': of(null),
    },
    before: due.filter(({ before }) => before).length,
    early: stands.filter((one) => !one.due && one.counted.length > 0).length,
  }
}

function countScheme(scheme: Scheme, groups: readonly Group[]): SchemeCount {
  const order = scheme.grades.map(({ grade }) => grade)
  const worst = groups.map(({ troubles }) =>
    worstOf(
      order,
      troubles.map((trouble) => gradeBy(scheme, trouble)),
    ),
  )
  return {
    scheme: scheme.id,
    grades: order.map((grade) => ({ grade, count: worst.filter((one) => one === grade).length })),
    between: worst.filter((one) => one === 'between').length,
    unknown: worst.filter((one) => one === 'unknown').length,
  }
}

/** The worst grade for certain; `between` where one that fits several may be worse than that. */
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
