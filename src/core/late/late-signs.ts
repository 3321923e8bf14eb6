import type { Sourced } from '#core/evidence/sourced.ts'
import { plainName } from '#core/identity/names.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import type { Period } from '#core/time/calendar-day.ts'
import { type LateSign, lateSigns } from './late-sign-names.ts'

type RedFlag = BodyOf<'referral'>['signs'][number]['sign']

export type LateSignRules = {
  /**
   * How people say each sign, in plain small letters; which red flags of the first call are that sign, and which answers
   * to our questions, as `question:answer`.
   */
  readonly signs: Readonly<
    Record<
      LateSign,
      Sourced<{
        readonly words: readonly string[]
        readonly flags: readonly RedFlag[]
        readonly answers: readonly string[]
      }>
    >
  >
  /** So long after the cut a sign is a late one; sooner it belongs to the healing and is written at a look. */
  readonly lateFrom: Sourced<Period>
}

/** What was told: free text, the red flags that were answered with yes, and what was chosen as `question:answer`. */
export type Said = {
  readonly text: string
  readonly flags: readonly RedFlag[]
  readonly answers?: readonly string[]
  /** The text is what the animal is brought for. */
  readonly isComplaint?: boolean
}

/**
 * The late signs somebody can hear in what was told, plainest first. Words count wherever they stand, also in "no
 * swelling": what is heard is only ever asked about, and a sign that is not asked about is the harm. For the same reason a
 * complaint in which none of them is heard is one of its own.
 *
 * @example lateSignsIn({ text: 'A hole below the ear that weeps.', flags: [] }, rules) // ['draining-tract']
 */
export function lateSignsIn(
  { text, flags, answers = [], isComplaint = false }: Said,
  { signs }: LateSignRules,
): LateSign[] {
  const plain = ` ${plainName(text)} `
  const heard = lateSigns.filter((sign) => {
    const { words, flags: asFlags, answers: asAnswers } = signs[sign].value
    if (asAnswers.some((one) => answers.includes(one))) return true
    return words.some((word) => plain.includes(` ${plainName(word)} `)) || asFlags.some((flag) => flags.includes(flag))
  })
  return heard.length === 0 && isComplaint && text.trim() !== '' ? ['complaint'] : heard
}
