import type { TroubleRules } from '#core/complications/rules.ts'
import type { Scheme, SchemeId, TroubleWindow } from '#core/complications/scheme.ts'
import { classOf } from '#core/complications/standing.ts'
import {
  type TroubleClass,
  type TroubleEvent,
  troubleClasses,
  troubleEvents,
} from '#core/complications/trouble-codes.ts'
import { windowOf } from '#core/complications/windows.ts'
import type { OperatedEar } from '#core/evidence/own/operated-ear.ts'
import { acrossAnimals } from '#core/stats/across-animals.ts'
import type { Interval } from '#core/stats/proportion-interval.ts'
import {
  type EventStanding,
  isDue,
  isKnown,
  standingIn,
  type TroubleGroup,
  type TroubleQuestion,
  type TroubleUnit,
  troubleGroups,
  worstGrade,
} from './trouble-groups.ts'

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
  /** Of ears: the interval that takes two ears of one animal as tied; null where it says no more than the plain one. */
  readonly acrossAnimals: Interval | null
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

export type CountTroubleBy = {
  readonly today: string
  readonly rules: TroubleRules
  readonly schemes: readonly Scheme[]
  readonly windows: readonly TroubleWindow[]
}

/**
 * Counts every kind of trouble among the ears of one operation in one species, or among the animals.
 *
 * @example countTrouble({ species: 'dog', procedure: 'teca-lbo', unit: 'ear' }, ears, { today, rules, schemes, windows })
 */
export function countTrouble(
  question: TroubleQuestion,
  ears: readonly OperatedEar[],
  how: CountTroubleBy,
): TroubleCount {
  const groups = troubleGroups(question, ears)
  const due = groups.filter((group) => isDue(group, how.rules.early.value, how.today))
  const had = due.flatMap(({ troubles }) => troubles.filter((one) => classOf(one) !== 'was-there-before'))
  return {
    unit: question.unit,
    operated: due.length,
    followed: due.filter((group) => isKnown(group, how.rules.early.value)).length,
    notYetDue: groups.length - due.length,
    events: troubleEvents.flatMap((event) => {
      const count = countEvent(event, groups, question.unit, how)
      return count.events + count.before + count.early > 0 ? [count] : []
    }),
    schemes: how.schemes.map((scheme) => countScheme(scheme, due)),
    windows: how.windows.map(({ id }) => ({
      window: id,
      count: had.filter(({ operated, on }) => windowOf(operated, on, how.windows) === id).length,
    })),
  }
}

function countEvent(
  event: TroubleEvent,
  groups: readonly TroubleGroup[],
  unit: TroubleUnit,
  how: CountTroubleBy,
): EventCount {
  const stands = groups.map((group) => ({ animal: group.ears[0].animal, ...standingIn(event, group, how) }))
  const of = (...some: readonly EventStanding[]) => stands.filter(({ standing }) => some.includes(standing))
  const known = of('events', 'free', 'before')
  const worst = of('events').map(
    ({ held }) => [...troubleClasses, null].find((one) => one !== 'was-there-before' && held.includes(one)) ?? null,
  )
  const as = (one: TroubleClass | null) => worst.filter((held) => held === one).length
  return {
    event,
    operated: known.length + of('lost', 'lost-before').length,
    followed: known.length,
    notYetDue: of('early', 'notYetDue').length,
    events: worst.length,
    classes: {
      complication: as('complication'),
      sequela: as('sequela'),
      'failure-to-cure': as('failure-to-cure'),
      'not-decided': as(null),
    },
    before: of('before', 'lost-before').length,
    early: of('early').length,
    acrossAnimals:
      unit === 'ear'
        ? acrossAnimals(known.map(({ animal, standing }) => ({ animal, had: standing === 'events' })))
        : null,
  }
}

function countScheme(scheme: Scheme, groups: readonly TroubleGroup[]): SchemeCount {
  const worst = groups.map((group) => worstGrade(scheme, group))
  const of = (grade: string) => worst.filter((one) => one === grade).length
  return {
    scheme: scheme.id,
    grades: scheme.grades.map(({ grade }) => ({ grade, count: of(grade) })),
    between: of('between'),
    unknown: of('unknown'),
  }
}
