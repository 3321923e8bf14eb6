import type { OwnerLanguage } from '#content/languages/index.ts'
import type { OwnerWords } from '#content/languages/owner-words.ts'
import { owedInEnglish } from '#content/wording/owed.ts'
import type { HomeMedicine, TimedMedicine } from '#core/home/medicine-times.ts'
import { hashText } from '#core/journal/canonical.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { compareText } from '#core/journal/compare-text.ts'
import { fill } from '#core/outcome/finding.ts'
import { timesWritten } from '#core/owed/operations.ts'
import type { Owed, OwedItem } from '#core/owed/owed-item.ts'
import { sayOwed } from '#core/owed/owed-wording.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { spokenWith } from '../case/owner-words.ts'
import { type CalendarEvent, eventLines } from './calendar-event.ts'
import { dateValue, dayAfterLast, utcValue, zoneLines } from './calendar-time.ts'
import { contentLine, escapeText, writeLines } from './content-lines.ts'
import { type MedicineEvent, type MedicineWords, medicineEvents } from './medicine-events.ts'
import { type OwnersItem, type Together, together } from './visits-together.ts'

/** `private`: the animal's name and "visit" or "medicine", fit for a calendar the family shares. `full`: in words. */
export type CalendarOptions = {
  readonly words?: 'private' | 'full'
  /** In place of the language of the household. The full words are those of the clinic, in English. */
  readonly language?: OwnerLanguage
  /** Medicines that stand in no discharge entry: a plan that is only asked about. */
  readonly alsoMedicines?: readonly HomeMedicine[]
}

/**
 * The owner's calendar as an iCalendar file (RFC 5545): visits as whole days, calls and meals as instants, medicine on
 * the wall clock of the clinic's zone with its own VTIMEZONE. The same case and stamp give the same bytes. An event
 * keeps its UID for ever; its SEQUENCE rises with every entry that can move it; after a death all are cancelled.
 *
 * @example calendarOf(file, owedOf(file, procedures, { rules: owedRules }), '2026-03-05T16:00:00.000Z')
 */
export function calendarOf(file: CaseFile, owed: Owed, now: string, options: CalendarOptions = {}): string {
  const spoken = spokenWith({ file, ...options })
  const said = spoken.words.calendar
  const name = file.theCase.latest('identity')?.body.name ?? said.unnamed
  const uid = (key: string) => uidOf(file, key)
  const around = { name, uid, file, options, said }
  const visits = together(ownersItems(file, owed)).flatMap((group) => visitEvents(group, around))
  const medicines = medicineEvents(file, (medicine) => medicineWords(medicine, around), uid, options.alsoMedicines)
  const events = [...visits, ...medicines.map(({ event }) => event)].sort(byTime)
  const stamp = utcValue(now)
  return writeLines([
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    `PRODID:-//Quiet Ear//Owed//${spoken.language.toUpperCase()}`,
    'CALSCALE:GREGORIAN',
    'METHOD:PUBLISH',
    contentLine('X-WR-CALNAME', escapeText(name)),
    ...zoneOf(file.clinic.zone, medicines),
    ...events.flatMap((event) => eventLines(event, stamp)),
    'END:VCALENDAR',
  ])
}

/** Says nothing to whoever reads it, and stays the same for the same thing of the same case. */
function uidOf({ clinicId, stream }: Pick<CaseFile, 'clinicId' | 'stream'>, key: string): string {
  return `${hashText(JSON.stringify([clinicId, stream, key])).slice(0, 32)}@quiet-ear`
}

function byTime(a: CalendarEvent, b: CalendarEvent): number {
  return compareText(a.time.from, b.time.from) || compareText(a.uid, b.uid)
}

const calls = new Set(['first-call', 'twelve-months', 'unknown-may-be-recorded'])

/** What belongs in an owner's calendar: visits, our calls, the last meal; work of the clinic does not. */
function ownersItems(file: CaseFile, owed: Owed): OwnersItem[] {
  const home = file.theCase.live('discharge')[0]?.at
  const isOwners = ({ way, what, dueBy }: OwedItem) => {
    if (way === 'visit' || what === 'last-meal' || calls.has(what)) return true
    return way === 'here' && what === 'face-and-eye-look' && home !== undefined && home < dueBy
  }
  return [
    ...owed.owed.map((item) => ({ item, ended: null })),
    ...owed.closed.map(({ item, because }) => ({ item, ended: because })),
  ].filter(({ item, ended }) => item.withOwner && isOwners(item) && ended !== 'not-needed')
}

type Around = {
  readonly name: string
  readonly uid: (key: string) => string
  readonly file: CaseFile
  readonly options: CalendarOptions
  readonly said: OwnerWords['calendar']
}

/** One event for what one visit can do. The others of the group keep their UID and are cancelled: none stands twice. */
function visitEvents(group: Together, around: Around): CalendarEvent[] {
  const [first, ...rest] = group.items
  if (!first) return []
  return [
    visitEvent(first, { items: group.items, window: group.window }, around),
    ...rest.map((item) => ({ ...visitEvent(item, { items: [item], window: null }, around), ...cancelled })),
  ]
}

const cancelled = { status: 'CANCELLED', alarm: null } as const

type Shared = { readonly items: readonly OwnersItem[]; readonly window: Together['window'] }

function visitEvent({ item, ended }: OwnersItem, { items, window }: Shared, around: Around): CalendarEvent {
  const { name, uid, file, options, said } = around
  const kind = calls.has(item.what) ? 'call' : item.what === 'last-meal' ? 'meal' : 'visit'
  const { phone } = file.clinic
  const about = { practice: file.clinic.name, phone }
  const full = options.words === 'full'
  // Settled before a death, and still standing in the days after it: no telephone reminds a house that mourns.
  const died = file.theCase.latest('death')?.at
  const isAfterDeath = died !== undefined && item.dueBy > died
  const isCancelled = isAfterDeath || ended === 'death' || ended === 'overtaken' || ended === 'too-late'
  const isToBook = kind === 'visit' && ended === null && !items.some(isBooked)
  const owed = items.map((one) => sayOwed(one.item, owedInEnglish))
  const what = [...new Set(owed.map((one) => one.what))].join('; ')
  const why = [...new Set(owed.map((one) => one.why))].join('\n')
  const call = isToBook ? fill(said.toBookPhone, about) : null
  return {
    uid: uid(item.id),
    sequence: item.revision + looksWritten(file, kind),
    status: isCancelled ? 'CANCELLED' : isToBook ? 'TENTATIVE' : 'CONFIRMED',
    summary: full ? `${name}: ${what}` : fill(said.private[isToBook ? 'toBook' : kind], { name }),
    description: full ? `${why}\n${call ?? phone}` : (call ?? fill(said.phone, about)),
    time: window ? { kind: 'days', from: dateValue(window.from), afterLast: dayAfterLast(window.until) } : timeOf(item),
    alarm: ended === null ? said.alarms[kind] : null,
  }
}

/** A day was agreed with the owner. */
function isBooked({ item }: OwnersItem): boolean {
  return item.what === 'agreed-visit' || item.why.some(({ code }) => code === 'agreed-with-owner')
}

/** Which visits fall together changes with every look at an ear: a number that only rises with them. */
function looksWritten({ theCase }: CaseFile, kind: 'call' | 'meal' | 'visit'): number {
  return kind === 'visit' ? timesWritten(theCase, 'check', () => true) : 0
}

function timeOf(item: OwedItem): CalendarEvent['time'] {
  const { dueFrom, dueBy, zone, precision } = item
  if (precision === 'minute') {
    return { kind: 'utc', from: utcValue(dueFrom), until: dueBy > dueFrom ? utcValue(dueBy) : null }
  }
  const from = dateValue(dayOf({ at: dueFrom, zone }))
  return { kind: 'days', from, afterLast: dayAfterLast(dayOf({ at: dueBy, zone })) }
}

function medicineWords(medicine: TimedMedicine, { name, file: { clinic }, options, said }: Around): MedicineWords {
  const goesOn = medicine.untilSaid ? [fill(said.goesOn, { practice: clinic.name, phone: clinic.phone })] : []
  if (options.words !== 'full')
    return { summary: fill(said.private.medicine, { name }), description: goesOn[0] ?? null }
  return { summary: `${name}: ${medicine.label}`, description: [medicine.purpose, ...goesOn].join('\n') }
}

/** The zone table covers the reminders; without reminders no event names a zone. */
function zoneOf(zone: string, medicines: readonly MedicineEvent[]): string[] {
  const firsts = medicines.map(({ first }) => first).sort()
  const lasts = medicines.map(({ last }) => last).sort()
  const [first] = firsts
  const last = lasts.at(-1)
  return first === undefined || last === undefined ? [] : zoneLines(zone, first, last)
}
