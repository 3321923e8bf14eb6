import { type OwnCase, ownCasesOf } from '#core/evidence/own/own-case.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { anaestheticOf } from '#core/owed/one-anaesthetic.ts'
import { type OperationOnFile, operationsOf } from '#core/owed/operations.ts'
import type { OwedCode, OwedItem } from '#core/owed/owed-item.ts'
import { addDays, dayOf } from '#core/time/calendar-day.ts'
import { type BaselineLook, baselineLookOf, nothingBefore } from './before.ts'
import { type LastingRule, lastingRuleOf } from './lasting-rule.ts'
import { blockSpans, type NerveLook, type NerveRules, nerveLooksOf } from './looks.ts'
import { nerveSigns } from './nerve-sign.ts'
import { type SignCourse, signCourseOf } from './sign-course.ts'

/** Face, Horner's, balance and eye of one operated ear, from the look before the operation until now. */
export type NerveCourse = {
  readonly operation: OperationOnFile
  /** The calendar day of the cut. */
  readonly day: string
  readonly baseline: BaselineLook | null
  readonly looks: readonly NerveLook[]
  readonly signs: readonly SignCourse[]
  /** When a missing blink is not graded. */
  readonly blocks: readonly { readonly from: string; readonly until: string }[]
  readonly rule: LastingRule
  /** The first day on which a deficit counts as lasting. */
  readonly lastsFrom: string
  /** The day of death, or on which the same ear was operated again: after it nobody looks for this course. */
  readonly ended: { readonly on: string; readonly because: 'death' | 'operated-again' } | null
}

/**
 * The course of every operated ear, oldest operation first. What an owner says is kept and never counts as an
 * examination; a blink missing under a block is not graded; without a look before nothing is put down to the operation.
 *
 * @example nerveCoursesOf(file, { ...owedRules, counting: ownCounting })[0]?.signs[0]?.now // 'worse'
 */
export function nerveCoursesOf(file: CaseFile, rules: NerveRules): NerveCourse[] {
  const operations = operationsOf(file)
  return ownCasesOf(file).map((own) => nerveCourseOf(own, operations, rules))
}

/** The course of one operated ear of a case. */
export function nerveCourseOf(own: OwnCase, operations: readonly OperationOnFile[], rules: NerveRules): NerveCourse {
  const rule = lastingRuleOf(own.file, rules.counting)
  const baseline = baselineLookOf(own, operations, rules.face)
  const looks = nerveLooksOf(own, rules)
  const before = baseline?.signs ?? nothingBefore
  const about = { rule, sharedFrom: sharedFrom(own, operations) }
  return {
    operation: own.operation,
    day: own.day,
    baseline,
    looks,
    signs: nerveSigns.map((sign) => signCourseOf(sign, before[sign], looks, about)),
    blocks: blockSpans(own, rules),
    rule,
    lastsFrom: addDays(own.day, rule.days.value),
    ended: endOf(own),
  }
}

/** From when on the other ear was operated as well, so that a new head tilt may be either's. */
function sharedFrom({ operation, file }: OwnCase, operations: readonly OperationOnFile[]): string | null {
  const together = anaestheticOf(operation, operations, file.theCase)
  const others = operations.filter(
    ({ id, side, done, moment }) =>
      done && side !== operation.side && (together.includes(id) || moment.at > operation.moment.at),
  )
  return others[0]?.moment.at ?? null
}

function endOf({ death, again, file }: OwnCase): NerveCourse['ended'] {
  if (again !== null) return { on: again, because: 'operated-again' }
  return death ? { on: dayOf({ at: death.at, zone: file.clinic.zone }), because: 'death' } : null
}

const looksOwed: ReadonlySet<OwedCode> = new Set<OwedCode>([
  'first-blink',
  'look-after-the-block',
  'face-and-eye-look',
  'eye-at-risk-look',
])

/**
 * The next look that is owed to this ear, by the rules of what is owed and no others; null when none is.
 *
 * @example nextLookOf(course, owed)?.dueBy
 */
export function nextLookOf({ operation }: NerveCourse, owed: readonly OwedItem[]): OwedItem | null {
  const due = owed.filter(
    (item) =>
      looksOwed.has(item.what) && item.side === operation.side && (item.operation ?? operation.id) === operation.id,
  )
  return [...due].sort((a, b) => (a.dueBy < b.dueBy ? -1 : 1))[0] ?? null
}
