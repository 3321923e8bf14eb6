import { compareText } from '../../journal/compare-text.ts'
import { laterOf } from '../../owed/setting.ts'
import { dayOf } from '../../time/calendar-day.ts'
import { blinkBesideChecks, blinkLook, inOrder } from './known-outcomes.ts'
import { deepEvents, isPastBlock, type OwnCase } from './own-case.ts'
import type { OwnCountingRules } from './own-outcome.ts'

/**
 * The day on which the first late swelling, abscess or tract was seen; never before the operation. A month or a year alone
 * is taken as its first day.
 */
export function firstTract(own: OwnCase): string | null {
  const troubles = own.troubles
    .filter(({ body }) => body.event === 'deep-infection')
    .map(({ body }) => body.firstNoticed)
  const days = [...deepEvents(own).map(({ body }) => body.firstSeen), ...troubles].map(dayOf)
  const [first] = days.sort(compareText)
  return first === undefined ? null : laterOf(first, own.day)
}

/** The last day on which somebody knew how the ear was; null where nobody has said anything since the operation. */
export function followedUntil(own: OwnCase): string | null {
  const told = own.statuses.filter(({ body }) => body.status !== 'unknown')
  const seen = [...own.checks, ...own.rounds, ...told].map(({ at }) => dayOf({ at, zone: own.file.clinic.zone }))
  const late = own.late.map(({ body }) => laterOf(dayOf(body.firstSeen), own.day))
  const noticed = own.troubles.map(({ body }) => laterOf(dayOf(body.firstNoticed), own.day))
  return [...seen, ...late, ...noticed].sort(compareText).at(-1) ?? null
}

/** A blink that was weaker than on the baseline: from which look on, the first one as on the baseline, and the last look. */
export type BlinkCourse = { readonly lostOn: string; readonly backOn: string | null; readonly lastLookOn: string }

/** Null where it was never weaker than before, or where that is not known. */
export function blinkCourse(own: OwnCase, rules: OwnCountingRules): BlinkCourse | null {
  const before = own.baseline?.[own.operation.side].blink
  const checked = own.checks
    .filter(isPastBlock(own, rules))
    .flatMap(({ at, body }) => (body.possibleBlockEffect ? [] : blinkLook(at, body.blink, before)))
  const looks = inOrder([...checked, ...blinkBesideChecks(own, rules)])
  const lost = looks.find(({ worse }) => worse)
  if (!lost) return null
  const day = (at: string) => dayOf({ at, zone: own.file.clinic.zone })
  const back = looks.find(({ at, worse }) => at > lost.at && !worse)
  return { lostOn: day(lost.at), backOn: back ? day(back.at) : null, lastLookOn: day((looks.at(-1) ?? lost).at) }
}
