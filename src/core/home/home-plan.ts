import { compareText } from '#core/journal/compare-text.ts'
import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { olderVersions } from '#core/journal/older-versions.ts'
import { operationsOf } from '#core/owed/operations.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { lastBlinkOf } from './last-blink.ts'
import type { HomeMedicine } from './medicine-times.ts'

type Change = Line<BodyOf<'medicine-change'>>
export type StoppedMedicine = BodyOf<'medicine-change'>['stops'][number]

/** A medicine of the home page, with the moment from which it is given no more. */
export type HomeCourse = HomeMedicine & {
  /** On the wall clock: doses before it are still given. Null while nothing stopped it. */
  readonly until: { readonly day: string; readonly time: string } | null
  /** The entry that sent it home. */
  readonly entry: string
  /** Of a medicine for an eye that nobody has seen blink well: its last planned dose is not its end. */
  readonly untilSaid: boolean
  /** The day of that entry, where it was written. */
  readonly sentOn: string
}

export type HomePlan = {
  readonly discharge: Line<BodyOf<'discharge'>>
  /** Every medicine since going home, also those that were stopped. */
  readonly courses: readonly HomeCourse[]
  /** The changes that count, oldest first. */
  readonly changes: readonly Change[]
  /** Stops of something that no page held: still said to the owner, and shown to the clinic. */
  readonly unmatched: readonly { readonly stop: StoppedMedicine; readonly change: Change }[]
}

/**
 * What an animal is given at home now: the newest discharge, and every change written after the animal went home. A
 * discharge corrected later does not silence a change: it is counted from when it was first written.
 *
 * @example homePlanOf(theCase)?.courses.filter(({ until }) => until === null).map(({ label }) => label)
 */
export function homePlanOf(theCase: Case): HomePlan | null {
  return homePlansOf(theCase).at(-1) ?? null
}

/** One plan for each time the animal went home, oldest first; a change belongs to the stay in which it was written. */
export function homePlansOf(theCase: Case): HomePlan[] {
  const stays = theCase
    .live('discharge')
    .map((discharge) => ({ discharge, since: wentHomeAt(theCase, discharge) }))
    .sort((a, b) => compareText(a.since, b.since))
  return stays.map(({ discharge, since }, place) => {
    const until = stays[place + 1]?.since
    const isOfStay = ({ at }: Change) => at >= since && (until === undefined || at < until)
    return planOf(theCase, discharge, theCase.live('medicine-change').filter(isOfStay))
  })
}

/** An entry of going home that is still being written, or corrected: which one, and when it is to count. */
export type HomeDraft = {
  readonly body: BodyOf<'discharge'> | BodyOf<'medicine-change'>
  readonly happenedAt: Line['header']['happenedAt']
  /** The entry it takes the place of; null for a new one. */
  readonly corrects: string | null
}

/**
 * What would be given at home if this entry were kept; null for a change where no animal went home.
 *
 * @example homePlanWith(theCase, { body, happenedAt, corrects: null })?.courses.length
 */
export function homePlanWith(theCase: Case, { body, happenedAt, corrects }: HomeDraft): HomePlan | null {
  const plan = homePlanOf(theCase)
  const header = { id: corrects ?? 'being-written', happenedAt }
  const line = { header, body, at: happenedAt.at } as unknown
  if ('medicines' in body) {
    const isCorrection = corrects !== null && corrects === plan?.discharge.header.id
    return planOf(theCase, line as HomePlan['discharge'], isCorrection ? plan.changes : [])
  }
  if (!plan) return null
  const changes = plan.changes.filter(({ header: { id } }) => id !== corrects)
  return planOf(theCase, plan.discharge, [...changes, line as Change])
}

function planOf(theCase: Case, discharge: HomePlan['discharge'], changes: readonly Change[]): HomePlan {
  const operated = new Set(operationsOf({ theCase }).flatMap(({ side, done }) => (done ? [side] : [])))
  const isUntilSaid = ({ form, side }: HomeMedicine): boolean => {
    if (side === null || (form !== 'eye-gel' && form !== 'eye-ointment')) return false
    const blink = lastBlinkOf(theCase, side)
    return blink === 'not-recorded' ? operated.has(side) : blink !== 'normal'
  }
  const sentHome = (medicines: readonly HomeMedicine[], { header }: Pick<Line, 'header'>): HomeCourse[] => {
    const rest = { until: null, entry: header.id, sentOn: dayOf(header.happenedAt) }
    return medicines.map((medicine) => ({ ...medicine, ...rest, untilSaid: isUntilSaid(medicine) }))
  }
  let courses: readonly HomeCourse[] = sentHome(discharge.body.medicines, discharge)
  const unmatched: { stop: StoppedMedicine; change: Change }[] = []
  for (const change of changes) {
    for (const stop of change.body.stops) {
      if (!courses.some((course) => stops(stop, course))) unmatched.push({ stop, change })
      courses = courses.map((course) => (stops(stop, course) ? stoppedBy(stop, course) : course))
    }
    courses = [...courses, ...sentHome(change.body.starts, change)]
  }
  return { discharge, courses, changes, unmatched }
}

/** When a stay at home began: the moment of the first version of its discharge. */
function wentHomeAt(theCase: Case, discharge: Line<BodyOf<'discharge'>>): string {
  const chain = [discharge.header.id, ...olderVersions(discharge.header.id, theCase)]
  const moments = chain.flatMap((id) => theCase.line(id)?.at ?? [])
  return moments.sort()[0] ?? discharge.at
}

/** By substance and side; a substance that nobody has settled is known by its name on the box. */
function stops(stop: StoppedMedicine, course: HomeCourse): boolean {
  return (stop.drug === course.drug || stop.label === course.label) && (stop.side ?? null) === (course.side ?? null)
}

/** Of two stops the earlier counts: nobody gives again what was stopped. */
function stoppedBy(stop: StoppedMedicine, course: HomeCourse): HomeCourse {
  const until = { day: stop.fromDay, time: stop.fromTime }
  const isEarlier = course.until === null || compareText(wall(until), wall(course.until)) < 0
  return isEarlier ? { ...course, until, untilSaid: false } : course
}

function wall({ day, time }: { readonly day: string; readonly time: string }): string {
  return `${day}T${time}`
}

/** One page as it could have been printed: since when, and what made it. */
export type HomeEdition = { readonly at: string; readonly line: Line }

/**
 * Every page that was true for a while since the animal went home, oldest first; the last one counts, and a page printed
 * before it no longer does.
 *
 * @example homeEditionsOf(theCase).length // 2, when one change followed
 */
export function homeEditionsOf(theCase: Case): HomeEdition[] {
  const plan = homePlanOf(theCase)
  if (!plan) return []
  const since = wentHomeAt(theCase, plan.discharge)
  const stay = new Set([plan.discharge.header.id, ...olderVersions(plan.discharge.header.id, theCase)])
  const isOfStay = ({ header, at, known }: Line) =>
    known && (stay.has(header.id) || (header.kind === 'medicine-change' && at >= since))
  const versions = theCase.lines.filter(isOfStay)
  const ids = new Set(versions.map(({ header }) => header.id))
  const takenBack = theCase.lines.filter(
    ({ header, state }) => state === 'live' && header.withdraws !== null && ids.has(header.withdraws),
  )
  return [...versions, ...takenBack]
    .map((line) => ({ at: line.at, line }))
    .sort((a, b) => compareText(a.line.header.writtenAt, b.line.header.writtenAt))
}
