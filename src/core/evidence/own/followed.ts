import { compareText } from '../../journal/compare-text.ts'
import type { NerveCourse } from '../../nerve-course/nerve-course.ts'
import { isGraded } from '../../nerve-course/sign-course.ts'
import { laterOf } from '../../owed/setting.ts'
import { dayOf } from '../../time/calendar-day.ts'
import { deepEvents, type OwnCase } from './own-case.ts'

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

/**
 * The blink of the course of the nerve: null where it was never weaker than before, or where that is not known. Neither what
 * an owner tells nor what a block may do begins or ends it.
 */
export function blinkCourse({ signs }: Pick<NerveCourse, 'signs'>): BlinkCourse | null {
  const looks = signs.find(({ sign }) => sign === 'blink')?.points.filter(isGraded) ?? []
  const place = looks.findIndex(({ change }) => change === 'worse')
  const lost = looks[place]
  if (!lost) return null
  const back = looks.slice(place + 1).find(({ change }) => change !== 'worse')
  return {
    lostOn: lost.look.on,
    backOn: back?.look.on ?? null,
    lastLookOn: (looks.at(-1) ?? lost).look.on,
  }
}
