import type { NerveSign } from './nerve-sign.ts'
import { isGraded, type SignCourse, type SignPoint } from './sign-course.ts'

/** Which signs together are one outcome of our results. A dry nostril, tears, throat and hearing are followed and not counted. */
export const signsOfOutcome = {
  face: ['blink', 'droop'],
  horner: ['horner'],
  balance: ['tilt', 'nystagmus', 'gait'],
  cornea: ['cornea'],
} as const satisfies Readonly<Record<string, readonly NerveSign[]>>
export type NerveOutcome = keyof typeof signsOfOutcome

/**
 * `side-not-attributable`: the animal has it, and with both ears operated nobody can say which of them it belongs to. It is
 * known of the animal, and of neither ear.
 */
export type Verdict = 'yes' | 'no' | 'not-known' | 'side-not-attributable'

export type NerveVerdicts = {
  /** New or worse at a look until that day, of any duration. */
  readonly any: Verdict
  /** By the rule of lasting deficits, the one that the course is said by. */
  readonly lasting: Verdict
  /** The last look of those signs that counts. */
  readonly lastAt: string | null
}

/**
 * What the course of an ear says of one outcome. One sign that is worse is enough; "no" needs a look at every sign, because
 * what nobody looked at is not normal. What an owner tells, and what a block may do, is no look here either.
 *
 * @param earlyUntilDay until which day after the operation something new belongs to it
 * @example nerveVerdicts(course.signs, 'face', 30).lasting // 'no'
 */
export function nerveVerdicts(
  signs: readonly SignCourse[],
  outcome: NerveOutcome,
  earlyUntilDay: number,
): NerveVerdicts {
  const asked: readonly NerveSign[] = signsOfOutcome[outcome]
  const some = signs.filter(({ sign }) => asked.includes(sign))
  const times = some.flatMap(({ last }) => (last ? [last.look.at] : []))
  return { any: anyOf(some, earlyUntilDay), lasting: lastingOf(some), lastAt: times.sort().at(-1) ?? null }
}

function anyOf(signs: readonly SignCourse[], earlyUntilDay: number): Verdict {
  const early = signs.map(({ points }) => points.filter((one) => isGraded(one) && one.look.day <= earlyUntilDay))
  const all = early.flat()
  if (all.some(({ change }) => change === 'worse')) return 'yes'
  if (all.some(isShared)) return 'side-not-attributable'
  if (all.some(({ change }) => change === 'not-attributable')) return 'not-known'
  return early.every((points) => points.some(({ look }) => look.day >= 1)) ? 'no' : 'not-known'
}

function lastingOf(signs: readonly SignCourse[]): Verdict {
  if (signs.some(({ lasting }) => lasting === 'lasting')) return 'yes'
  if (signs.some(({ lasting }) => lasting === 'lasts-of-no-side')) return 'side-not-attributable'
  return signs.every(({ lasting }) => lasting === 'not-lasting') ? 'no' : 'not-known'
}

function isShared({ change, because }: SignPoint): boolean {
  return change === 'not-attributable' && because === 'both-ears'
}
