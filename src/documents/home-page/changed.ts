import type { OwnerWords } from '#content/languages/owner-words.ts'
import { homeForClinicInEnglish } from '#content/wording/home.ts'
import { homeChangeForClinicInEnglish } from '#content/wording/home-change.ts'
import { type HomeCourse, type HomePlan, homeEditionsOf } from '#core/home/home-plan.ts'
import { medicineTimes, tabletsNeeded } from '#core/home/medicine-times.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCalendarDay } from '#core/time/calendar-day.ts'
import { sayDay } from '../case/case-words.ts'
import { type Block, paragraph } from '../render/model.ts'
import { saidDose, sayAmount } from './medicines.ts'
import type { Today } from './today.ts'

/** A page that takes the place of another says so at its head: the old one still hangs on the kitchen door. */
export function replacesOlder({ theCase }: CaseFile, { homeChange: words, dates }: OwnerWords): Block[] {
  const editions = homeEditionsOf(theCase)
  const [before, now] = editions.slice(-2)
  if (!before || !now) return []
  const about = {
    number: String(editions.length),
    date: sayDay(now.line.header.happenedAt, dates),
    before: sayDay(before.line.header.happenedAt, dates),
  }
  return [paragraph([{ kind: 'strong', text: fill(words.replaces, about) }])]
}

/**
 * What stops and what starts, from the newest change, before the table of what is given now. A stop is said for as long as
 * an older page would still have it given, a start for as long as it runs.
 */
export function changedMedicines(plan: HomePlan, { clinic }: CaseFile, said: OwnerWords, today: Today): Block[] {
  const { homeChange: words } = said
  if (plan.changes.length === 0) return []
  const isNew = plan.changes.some(({ header }) => today.isDayOf(header.happenedAt))
  const isAhead = (course: HomeCourse) => (medicineTimes(course, clinic.zone).lastDose?.at ?? '') >= today.at
  const stopped = plan.courses
    .filter((course) => course.until !== null && (isNew || isAhead({ ...course, until: null })))
    .map((course) => [saidStop(course.label, course.until, said), leftOver(course, clinic.zone, said)].join(' ').trim())
  const unnamed = plan.unmatched.map(({ stop }) =>
    saidStop(stop.label, { day: stop.fromDay, time: stop.fromTime }, said),
  )
  const started = plan.courses
    .filter(
      (course) => course.until === null && course.entry !== plan.discharge.header.id && (isNew || isAhead(course)),
    )
    .map((course) => {
      const first = saidDose(medicineTimes(course, clinic.zone).doses[0], said, course.sentOn)
      return fill(words.start, { medicine: course.label, first })
    })
  const lines = [...stopped, ...unnamed, ...started]
  if (lines.length === 0) return []
  return [{ kind: 'callout', tone: 'stop', word: words.changed, lines: [...lines, words.calendar] }]
}

function saidStop(medicine: string, until: HomeCourse['until'], { homeChange: words, dates }: OwnerWords): string {
  if (!until) return ''
  return fill(words.stop, { medicine, date: sayCalendarDay(until.day, dates), time: until.time })
}

/** Counted from what was handed out: tablets whole, as they were counted out; of gel nobody counts what is left. */
function leftOver(course: HomeCourse, zone: string, said: OwnerWords): string {
  if (course.form !== 'tablet' && course.form !== 'liquid') return ''
  const left = tabletsNeeded({ ...course, until: null }, zone).handOut.minus(tabletsNeeded(course, zone).total)
  if (left.lte(0)) return ''
  return fill(said.homeChange.left, { amount: sayAmount(left, course.form, said.home) })
}

/** What was not stopped before this moment; what was over by itself is said to be finished. */
export function coursesToGive(
  { courses }: HomePlan,
  { clinic }: CaseFile,
  since: string | null,
): readonly HomeCourse[] {
  if (since === null) return courses
  return courses.filter((course) => {
    const last = medicineTimes(course, clinic.zone).lastDose
    return last !== null && (last.at >= since || course.until === null)
  })
}

/**
 * From when on doses count that are still to be given: the moment the page is read, or the change that made it if that is
 * later. Null on the day on which the animal goes home with its first page: all of it is still to be given.
 */
export function stillFrom(plan: HomePlan, { theCase }: CaseFile, today: Today): string | null {
  const made = plan.changes.length === 0 ? null : (homeEditionsOf(theCase).at(-1)?.at ?? null)
  if (today.isFirst) return made
  return made !== null && made > today.at ? made : today.at
}

/** A stop that matches nothing on any page: the owner is told to stop it all the same, and the clinic asks. */
export function stoppedUnnamed({ unmatched }: HomePlan): Block[] {
  const lines = unmatched.map(({ stop, change }) =>
    fill(homeChangeForClinicInEnglish.unmatched, { medicine: stop.label, date: sayDay(change.header.happenedAt) }),
  )
  return lines.length === 0 ? [] : [{ kind: 'callout', tone: 'stop', word: homeForClinicInEnglish.notYetWord, lines }]
}
