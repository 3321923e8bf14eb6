import { namesInEnglish } from '#content/wording/app-case.ts'
import { lateInEnglish as words } from '#content/wording/app-late.ts'
import type { OfferedEar } from '#core/late/late-answer.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { daysBetween, sayCalendarDay } from '#core/time/calendar-day.ts'
import type { ShownEar } from './use-index-ears.ts'

/** "LEFT ear of Fern, TECA-LBO on 12 September 2025, 14 months before". */
export function sayEar({ side, name, procedure, on }: ShownEar, toldOn: string): string {
  const days = daysBetween(on, toldOn)
  // Calendar months are told of by people who count on their fingers: 30 days and a half are near enough.
  const months = Math.floor(days / 30.44)
  const ago = months < 2 ? fill(words.agoDays, { count: String(days) }) : sayCount(words.ago, months)
  return fill(words.ear, { side, name, procedure: namesInEnglish.procedures[procedure], day: sayCalendarDay(on), ago })
}

/** Why it is offered and what stands against it, in the words that are kept with the answer. */
export function sayWhyEar({ strength, reasons, doubts }: ShownEar): string {
  const because = fill(words.said, {
    strength: words.strengths[strength],
    reasons: reasons.map((one) => words.reasons[one]).join(', '),
  })
  if (doubts.length === 0) return because
  return `${because} ${fill(words.against, { doubts: doubts.map((one) => words.doubts[one]).join(', ') })}`
}

/** An ear as it is kept with the answer: with the words that stood beside it. */
export function offeredEar(ear: ShownEar): OfferedEar {
  const { stream, animal, operation, side, on } = ear
  return { stream, animal, operation, side, on, words: sayWhyEar(ear) }
}
