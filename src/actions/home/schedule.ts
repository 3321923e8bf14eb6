import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { sources } from '#content/sources/index.ts'
import { caution } from '#content/wording/caution.ts'
import { owedInEnglish } from '#content/wording/owed.ts'
import { type ScheduleNote, scheduleNotes } from '#content/wording/owed-schedule.ts'
import { otherSide } from '#core/animal/species.ts'
import { type Cited, cite } from '#core/evidence/cite.ts'
import { clockChanges, medicineTimes, tabletsNeeded } from '#core/home/medicine-times.ts'
import { fill } from '#core/outcome/finding.ts'
import { owedOf } from '#core/owed/owed.ts'
import type { Owed, OwedItem } from '#core/owed/owed-item.ts'
import { sayOwed } from '#core/owed/owed-wording.ts'
import { procedureNamed } from '#core/procedures/procedure.ts'
import { wallClock } from '#core/time/moment.ts'
import { elapsedTimes } from '#core/time/wall-times.ts'
import { plain } from '#core/units/quantity.ts'
import { calendarOf } from '#documents/calendar/calendar.ts'
import { type ClockMedicine, fileOfRequest, homeMedicineOf } from './schedule-file.ts'
import { readScheduleRequest, type ScheduledMedicine, type ScheduleRequest } from './schedule-request.ts'

export type ScheduledItem = {
  readonly id: string
  readonly code: OwedItem['what']
  readonly what: string
  readonly who: string
  readonly way: OwedItem['way']
  readonly side: OwedItem['side']
  readonly dueFrom: string
  readonly dueBy: string
  readonly precision: OwedItem['precision']
  readonly why: string
  readonly reasons: readonly string[]
  readonly sources: readonly Cited[]
}

export type ScheduledCourse = {
  readonly drug: string
  readonly by: 'wall-clock' | 'hours-passed'
  readonly doses: readonly string[]
  readonly lastDose: string | null
  readonly stopDay?: string
  readonly tablets?: { readonly total: string; readonly handOut: string }
}

export type ScheduleAnswer = {
  readonly owed: readonly ScheduledItem[]
  readonly closed: readonly (ScheduledItem & { readonly because: string })[]
  readonly medicines: readonly ScheduledCourse[]
  readonly findings: readonly {
    readonly code: ScheduleNote
    readonly level: 'note'
    readonly text: string
    readonly sources: readonly Cited[]
  }[]
  readonly caution: string
}

/**
 * What falls due after an operation, for the `schedule` contract: the request becomes a case in memory and the same
 * engine answers as for a real one. Malformed input throws an InputError that names the field.
 */
export function schedule(input: unknown): ScheduleAnswer {
  const request = readScheduleRequest(input)
  const { owed, closed } = owedOfRequest(request)
  return {
    owed: owed.map((item) => writeItem(item, request)),
    closed: closed.map(({ item, because }) => ({ ...writeItem(item, request), because })),
    medicines: request.medicines.map((medicine) => courseOf(medicine, request)),
    findings: notesOf(request).map(({ code, about }) => ({
      code,
      level: 'note',
      text: fill(scheduleNotes[code], about),
      sources: [],
    })),
    caution,
  }
}

/** The same as a calendar file; `now` is its DTSTAMP, UTC with milliseconds. */
export function scheduleCalendar(input: unknown, now: string): string {
  const request = readScheduleRequest(input)
  const medicines = request.medicines.flatMap((one) => (one.kind === 'clock' ? [homeMedicineOf(one, request)] : []))
  return calendarOf(fileOfRequest(request), owedOfRequest(request), now, { alsoMedicines: medicines })
}

/** Before the operation only what was asked for as booked: a done operation has nothing left to prepare. */
function owedOfRequest(request: ScheduleRequest): Owed {
  const { owed, closed } = owedOf(fileOfRequest(request), procedures, { rules: owedRules, plannedCountsAs: 'done' })
  if (request.operation.stage === 'booked') return { owed, closed }
  return { owed, closed: closed.filter(({ because }) => because !== 'too-late' && because !== 'not-needed') }
}

function writeItem(item: OwedItem, request: ScheduleRequest): ScheduledItem {
  const said = sayOwed(item, owedInEnglish)
  return {
    id: item.id,
    code: item.what,
    what: said.what,
    who: said.who,
    way: item.way,
    side: item.side,
    dueFrom: withOffset(item.dueFrom, request),
    dueBy: withOffset(item.dueBy, request),
    precision: item.precision,
    why: said.why,
    reasons: item.why.map(({ code }) => code),
    sources: cite(item.facts, sources),
  }
}

/** RFC 3339 with the offset that the zone has on that day. */
function withOffset(at: string, { operation }: ScheduleRequest): string {
  return wallClock({ at, zone: operation.zone }).toString({ timeZoneName: 'never', smallestUnit: 'second' })
}

function courseOf(medicine: ScheduledMedicine, request: ScheduleRequest): ScheduledCourse {
  if (medicine.kind === 'clock') return clockCourse(medicine, request)
  const { zone } = request.operation
  const first = { at: medicine.from, zone, precision: 'minute', by: 'person' } as const
  const doses = elapsedTimes(first, medicine.everyHours, medicine.doses).map(({ at }) => withOffset(at, request))
  return { drug: medicine.drug, by: 'hours-passed', doses, lastDose: doses.at(-1) ?? null }
}

function clockCourse(medicine: ClockMedicine, request: ScheduleRequest): ScheduledCourse {
  const { zone } = request.operation
  const home = homeMedicineOf(medicine, request)
  const { doses, stopDay } = medicineTimes(home, zone)
  const shown = doses.map(({ at }) => withOffset(at, request))
  const course = {
    drug: medicine.drug,
    by: 'wall-clock',
    doses: shown,
    lastDose: shown.at(-1) ?? null,
    stopDay,
  } as const
  if (medicine.each === undefined) return course
  const { total, handOut } = tabletsNeeded(home, zone)
  return { ...course, tablets: { total: plain(total), handOut: plain(handOut) } }
}

type Note = { readonly code: ScheduleNote; readonly about: Readonly<Record<string, string>> }

function notesOf(request: ScheduleRequest): Note[] {
  const { operation, findings, policy } = request
  const notes: Note[] = []
  if (policy.closedWeekdays === undefined) notes.push({ code: 'weekends-closed', about: {} })
  if (findings && !findings.at) notes.push({ code: 'finding-right-after', about: {} })
  if (findings && operation.stage === 'booked') notes.push({ code: 'finding-before-operation', about: {} })
  const other = otherSide(operation.side)
  if (findings?.blink?.[other] || findings?.tearTest?.[other])
    notes.push({ code: 'other-side', about: { side: other } })
  const { species, name } = procedureNamed(operation.procedure, procedures)
  if (!species.some((one) => one === operation.species)) {
    notes.push({ code: 'other-species', about: { name, species: operation.species } })
  }
  for (const medicine of request.medicines) notes.push(...medicineNotes(medicine, request))
  return notes
}

function medicineNotes(medicine: ScheduledMedicine, request: ScheduleRequest): Note[] {
  if (medicine.kind !== 'clock') return []
  const { drug } = medicine
  const home = homeMedicineOf(medicine, request)
  const changes = clockChanges(medicineTimes(home, request.operation.zone).doses)
  const starts: Note[] = medicine.firstDay ? [] : [{ code: 'starts-day-after', about: { drug, day: home.firstDay } }]
  return [
    ...starts,
    ...changes.map(({ clock, day, time, shown }): Note => {
      return { code: clock === 'twice' ? 'clock-twice' : 'clock-skipped', about: { drug, day, time, shown } }
    }),
  ]
}
