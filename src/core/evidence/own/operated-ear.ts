import type { ReasonGroup } from '#core/animal/main-reason.ts'
import type { ProcedureId } from '#core/animal/procedure.ts'
import type { Side, Species } from '#core/animal/species.ts'
import type { TroubleFacts } from '#core/complications/trouble.ts'
import { troubleFactsOf } from '#core/complications/trouble-facts.ts'
import { lastBefore, troublesAfter } from '#core/complications/troubles-of.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { NerveRules } from '#core/nerve-course/looks.ts'
import { nerveCourseOf } from '#core/nerve-course/nerve-course.ts'
import { oneAnaesthetic } from '#core/owed/one-anaesthetic.ts'
import { operationsOf } from '#core/owed/operations.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { type BlinkCourse, blinkCourse, firstTract, followedUntil } from './followed.ts'
import { knownOutcomesOf } from './known-outcomes.ts'
import { ownCasesOf, ownCaseUntil } from './own-case.ts'
import type { KnownOutcome, OwnOutcome } from './own-outcome.ts'
import { ownRulesOf } from './own-rules.ts'

/** What the clinic's own figures keep of one operated ear: no name, no owner; which day, which operation, what is known. */
export type OperatedEar = {
  readonly animal: string
  readonly operation: string
  /** Both ears under one anaesthetic are one operation: the id of the first of them. */
  readonly session: string
  readonly species: Species
  readonly procedure: ProcedureId
  readonly side: Side
  /** As the signed summary says it. */
  readonly reason: ReasonGroup
  /** Day of the cut. */
  readonly on: string
  /** Day of death, when that is on record. */
  readonly died: string | null
  readonly known: Readonly<Record<OwnOutcome, KnownOutcome>>
  /** Not known of this ear, and known of its animal: with both ears operated nobody can say of which it is. */
  readonly ofNoSide: readonly OwnOutcome[]
  /** The case it stands in. */
  readonly stream: string
  /** The last day on which somebody knew how the ear was; null where nobody has said anything. */
  readonly followedUntil: string | null
  /** Day of the first late swelling, abscess or tract. */
  readonly tractOn: string | null
  /** A blink that was weaker than before the operation, and when it was back. */
  readonly blink: BlinkCourse | null
  /** Everything that went wrong with it, and with the animal after its operation. */
  readonly troubles: readonly TroubleFacts[]
}

/**
 * Every operated ear of a case with what is known of it, oldest first. A case without an identity has none: dogs and
 * cats are never counted together.
 *
 * @param until only what was seen up to this day; without it everything on record
 * @example operatedEarsOf(file, { ...owedRules, counting: ownCounting })[0]?.known.deep_recurrence // null: nobody asked yet
 */
export function operatedEarsOf(file: CaseFile, common: NerveRules, until?: string): OperatedEar[] {
  const rules = ownRulesOf(file.house, common.counting)
  const identity = file.theCase.latest('identity')
  if (!identity) return []
  const operations = operationsOf(file)
  const { subject } = identity.header
  const done = ownCasesOf(file)
  const all = until === undefined ? done : done.filter(({ day }) => day <= until).map((own) => ownCaseUntil(own, until))
  const seen = all.map((own) => {
    const course = nerveCourseOf(own, operations, { ...common, counting: rules })
    const troubles = troublesAfter(own, rules, own === lastBefore(all, own.death))
    return { own, course, troubles, ...knownOutcomesOf(own, course, troubles, rules) }
  })
  return seen.map(({ own, course, troubles, known, ofNoSide }) => {
    const { id, procedure, side } = own.operation
    // An ear that was operated again is watched no longer.
    const shared = own.again === null ? sharedWith(seen, known) : []
    return {
      animal: 'animal' in subject ? subject.animal : file.stream,
      operation: id,
      session: oneAnaesthetic(own.operation, operations, file.theCase)?.first.id ?? id,
      species: identity.body.species,
      procedure,
      side,
      reason: own.summary?.mainReason ?? 'not-recorded',
      on: own.day,
      died: own.death ? dayOf({ at: own.death.at, zone: file.clinic.zone }) : null,
      known: { ...known, ...Object.fromEntries(shared.map((outcome) => [outcome, null])) },
      ofNoSide: [...new Set([...ofNoSide, ...shared])],
      stream: file.stream,
      followedUntil: followedUntil(own),
      tractOn: firstTract(own),
      blink: blinkCourse(course),
      troubles: troubles.map(troubleFactsOf),
    }
  })
}

/** What the animal has of no side is nobody's "no": an ear counts as free of it only where no look found it at the other. */
function sharedWith(
  ears: readonly { readonly ofNoSide: readonly OwnOutcome[] }[],
  known: OperatedEar['known'],
): OwnOutcome[] {
  return [...new Set(ears.flatMap(({ ofNoSide }) => ofNoSide))].filter((outcome) => known[outcome] !== true)
}
