import { homePlansOf } from '#core/home/home-plan.ts'
import {
  daysApart,
  type HomeMedicine,
  medicineTimes,
  stretchesOf,
  type TimedMedicine,
} from '#core/home/medicine-times.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { rootOf, timesWritten } from '#core/owed/operations.ts'
import type { WallTime } from '#core/time/wall-times.ts'
import type { CalendarEvent } from './calendar-event.ts'
import { localValue } from './calendar-time.ts'

type Discharge = Line<BodyOf<'discharge'>>
type Change = Line<BodyOf<'medicine-change'>>

/** A reminder and the instants it covers, for the zone table of the file. */
export type MedicineEvent = { readonly event: CalendarEvent; readonly first: string; readonly last: string }

export type MedicineWords = { readonly summary: string; readonly description: string | null }

/**
 * Reminders on the wall clock, one series for each medicine and clock time. A time that a clock change skips or shows
 * twice is written dose by dose: a daily rule leaves a skipped time out (RFC 5545, 3.3.10), and a dose may not be lost.
 * Series of an earlier version of the discharge, or of a change, that the newest one no longer has are cancelled under
 * their own name; what was stopped ends where it was stopped.
 */
export function medicineEvents(
  file: CaseFile,
  words: (medicine: TimedMedicine) => MedicineWords,
  uid: (key: string) => string,
  also: readonly HomeMedicine[] = [],
): MedicineEvent[] {
  const { theCase, clinic } = file
  const dead = theCase.latest('death') !== undefined
  const kinds = ['discharge', 'medicine-change', 'death'] as const
  const written = kinds.reduce((sum, kind) => sum + timesWritten(theCase, kind, () => true), 0)
  const versions = (theCase.lines as readonly (Discharge | Change)[]).filter(
    ({ header, known, erased }) =>
      known && !erased && (header.kind === 'discharge' || header.kind === 'medicine-change'),
  )
  const courses = homePlansOf(theCase).flatMap((plan) => plan.courses)
  const found = new Map<string, MedicineEvent>()
  // Live versions come last and win over what they replaced.
  const ordered = [
    ...versions.filter(({ state }) => state !== 'live'),
    ...versions.filter(({ state }) => state === 'live'),
  ]
  const add = (medicine: TimedMedicine, root: string, live: boolean) => {
    const status = dead || !live ? 'CANCELLED' : 'CONFIRMED'
    for (const series of seriesOf(medicine, clinic.zone)) {
      const key = `medicine:${root}:${medicine.drug}:${medicine.side ?? ''}:${series.key}`
      const event: CalendarEvent = {
        ...words(medicine),
        uid: uid(key),
        sequence: Math.max(written - 1, 0),
        status,
        time: { kind: 'wall', zone: clinic.zone, from: series.from, daily: series.daily, everyDays: series.everyDays },
        alarm: 'PT0S',
      }
      found.set(key, { event, first: series.first, last: series.last })
    }
  }
  for (const { header, body, state } of ordered) {
    const root = rootOf(theCase, header.id)
    const own = courses.filter(({ entry }) => state === 'live' && entry === header.id)
    const medicines = 'medicines' in body ? body.medicines : body.starts
    for (const medicine of medicines) add(medicine, root, state === 'live' && own.length === 0)
    for (const course of own) add(course, root, true)
  }
  for (const medicine of also) add(medicine, 'plan', true)
  return [...found.values()]
}

type Series = {
  readonly key: string
  readonly from: string
  readonly daily: number
  readonly everyDays: number
  readonly first: string
  readonly last: string
}

/** One series for each clock time; each step of a dose that is brought down has series of its own, named by its day. */
function seriesOf(medicine: TimedMedicine, zone: string): Series[] {
  return stretchesOf(medicine).flatMap((stretch, place) => {
    const step = place === 0 ? '' : `:from:${stretch.firstDay}`
    return seriesOfStretch(stretch, zone).map((series) => ({ ...series, key: `${series.key}${step}` }))
  })
}

function seriesOfStretch(medicine: TimedMedicine, zone: string): Series[] {
  const { doses } = medicineTimes(medicine, zone)
  const times = [...new Set(doses.map(({ time }) => time))].sort()
  return times.flatMap((time) => {
    const ofTime = doses.filter((dose) => dose.time === time)
    const [first] = ofTime
    const last = ofTime.at(-1)
    if (!first || !last) return []
    if (ofTime.some(({ clock }) => clock !== 'plain')) return ofTime.map(single)
    const rule = { from: localValue(first.day, time), daily: ofTime.length, everyDays: daysApart(medicine) }
    return [{ key: time, ...rule, first: first.at, last: last.at }]
  })
}

function single(dose: WallTime): Series {
  const { day, time, shown, at } = dose
  return { key: `${time}:${day}`, from: localValue(day, shown), daily: 1, everyDays: 1, first: at, last: at }
}
