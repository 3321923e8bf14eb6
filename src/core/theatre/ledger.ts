import type { CaseFile } from '#core/journal/clinic.ts'
import { compareText } from '#core/journal/compare-text.ts'
import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { isAbout, linesAbout } from '#core/journal/lines-about.ts'
import { anaestheticOf } from '#core/owed/one-anaesthetic.ts'
import { type OperationOnFile, operationsOf } from '#core/owed/operations.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { type ZoneChange, zoneChanges } from '#core/time/zone-changes.ts'
import type { Quantity } from '#core/units/quantity.ts'
import { shoutsOf } from './shouts.ts'
import { type ClockMark, clockMarks, doneAt, type Stamp } from './stamps.ts'

export type Observation = Line<BodyOf<'observation'>>
export type ObservedValue = Observation['body']['values'][number]
export type Observable = ObservedValue['what']
export type Given = Line<BodyOf<'drug-given'>>

/** A stretch in which nothing was measured that counts; `until` is null while it lasts. Nothing is drawn across it. */
export type Gap = { readonly at: string; readonly until: string | null; readonly minutes: number }

/** One row of the ledger. Entries stand in corrected order; days, changes of the clock and gaps stand between them. */
export type LedgerRow =
  /** `sideBySide`: another entry says something else of the same look, and a person must settle it. */
  | { readonly kind: 'observation'; readonly at: string; readonly line: Observation; readonly sideBySide: boolean }
  | { readonly kind: 'stamp'; readonly at: string; readonly line: Stamp; readonly weight: StampWeight }
  | { readonly kind: 'given'; readonly at: string; readonly line: Given }
  | ({ readonly kind: 'gap' } & Gap)
  | { readonly kind: 'day'; readonly at: string; readonly day: string }
  | { readonly kind: 'clock-change'; readonly at: string; readonly change: ZoneChange }

/** What a stamp is for the reader of a ledger: a mark of the clock, an emergency, or a step of the operation. */
export type StampWeight = 'mark' | 'emergency' | 'step'

export type Ledger = {
  /** Whose anaesthetic it is: one operation, or those on both ears, first to last. */
  readonly together: readonly OperationOnFile[]
  readonly rows: readonly LedgerRow[]
  readonly observations: readonly Observation[]
  readonly gaps: readonly Gap[]
  /** Where gaps are counted: from the beginning of the anaesthetic to tube out. Null where nobody stamped it. */
  readonly start: string | null
  readonly tubeOut: string | null
}

/**
 * What happened in one anaesthetic as a column of time: each observation with what was measured then, each stamp, drug
 * and emergency, and every stretch longer than `every` in which nothing was measured, as a row of its own. An artefact
 * and "nothing could be measured" are rows and no measurement: neither ends a gap. Nothing is interpolated.
 *
 * @example ledgerOf(file, operation.id, now, theatreTimers.observeEvery.value).gaps // [{ at: …, until: …, minutes: 24 }]
 */
export function ledgerOf(
  file: Pick<CaseFile, 'theCase' | 'clinic'>,
  operation: string,
  now: string,
  every: Quantity<'min'>,
): Ledger {
  const { theCase } = file
  const together = togetherWith(theCase, operation)
  const ids = together.length === 0 ? [operation] : together.map(({ id }) => id)
  const start = marked(theCase, ids, 'anaesthesia-start')[0] ?? null
  const tubeOut = marked(theCase, ids, 'tube-out').at(-1) ?? null
  const observations = observationsOf(theCase, ids)
  const end = tubeOut ?? stillUntil(theCase, ids, start, now) ?? lastStamped(theCase, ids)
  const gaps = gapsIn(observations, { start, tubeOut, end }, every)
    // What ends only now still lasts.
    .map((gap) => (tubeOut === null && gap.until === now ? { ...gap, until: null } : gap))
  const entries = entryRows(theCase, ids, observations)
  const rows = [...entries, ...gaps.map((gap) => ({ kind: 'gap', ...gap }) as const)].sort(inOrder)
  return { together, rows: withDays(rows, file.clinic.zone), observations, gaps, start, tubeOut }
}

/** The operations that share the anaesthetic of one; none where that one is not on file. */
export function togetherWith(theCase: Case, operation: string): OperationOnFile[] {
  const known = operationsOf({ theCase })
  const one = known.find(({ id }) => id === operation)
  const ids = one ? anaestheticOf(one, known, theCase) : []
  return ids.flatMap((id) => known.find((other) => other.id === id) ?? [])
}

/** The moments of a mark in one anaesthetic, first to last. */
export function marked(theCase: Case, operations: readonly string[], mark: ClockMark): string[] {
  return operations.flatMap((operation) => doneAt(theCase, operation, mark) ?? []).sort()
}

/** Whether an entry is about one of these operations. */
export function isAboutAny(line: Pick<Line<unknown>, 'header'>, operations: readonly string[]): boolean {
  return operations.some((operation) => isAbout(line, operation))
}

/**
 * The observations of one anaesthetic, oldest first: those about its operations, and those about the animal in theatre or
 * recovery between its beginning and the next operation.
 */
function observationsOf(theCase: Case, operations: readonly string[]): Observation[] {
  const { from, until } = courseOf(theCase, operations)
  return theCase.live('observation').filter((line) => {
    if (line.body.where === 'ward') return false
    if (isAboutAny(line, operations)) return true
    return line.header.subject.kind === 'animal' && from !== null && line.at >= from && line.at < until
  })
}

const ever = '9999-12-31T23:59:59.999Z'

/** From the first thing that was stamped in an anaesthetic to the beginning of the next operation. */
export function courseOf(
  theCase: Case,
  operations: readonly string[],
): { readonly from: string | null; readonly until: string } {
  const known = operationsOf({ theCase })
  const own = known.filter(({ id, done }) => operations.includes(id) && done).map(({ moment: { at } }) => at)
  const stamps = operations.flatMap((operation) => linesAbout(theCase, 'theatre-stamp', operation)).map(({ at }) => at)
  const from = [...stamps, ...own].sort()[0] ?? null
  const last = own.sort().at(-1) ?? from ?? ever
  const next = known.find(({ id, done, moment: { at } }) => !operations.includes(id) && done && at > last)
  return { from, until: next?.moment.at ?? ever }
}

/** Whether a look measured anything that counts. */
export function isMeasured({ body }: Observation): boolean {
  return body.values.some(({ artefact }) => !artefact)
}

const dayMs = 24 * 60 * 60_000

/** An anaesthetic without a stamp of its end lasts until now; signed, or a day later, nobody knows how long it lasted. */
function stillUntil(theCase: Case, operations: readonly string[], start: string | null, now: string): string | null {
  const signed = operations.every((one) => linesAbout(theCase, 'operation-summary', one).length > 0)
  if (start === null || signed || now < start) return null
  return Date.parse(now) - Date.parse(start) < dayMs ? now : null
}

/** Nobody stamped the end: it lasted at least until the last thing that was stamped of the operation itself. */
function lastStamped(theCase: Case, operations: readonly string[]): string | null {
  const lasts = operations.flatMap((operation) => {
    const emergencies = new Set(shoutsOf(theCase, operation).flatMap(({ begun, ended }) => [begun, ended]))
    return linesAbout(theCase, 'theatre-stamp', operation).findLast((line) => !emergencies.has(line))?.at ?? []
  })
  return lasts.sort().at(-1) ?? null
}

function gapsIn(
  observations: readonly Observation[],
  { start, tubeOut, end }: Record<'start' | 'tubeOut' | 'end', string | null>,
  every: Quantity<'min'>,
): Gap[] {
  const measured = observations
    .filter(isMeasured)
    .map(({ at }) => at)
    .filter((at) => (start === null || at >= start) && (tubeOut === null || at <= tubeOut))
  const last = measured.at(-1)
  const points = [
    ...(start === null ? [] : [start]),
    ...measured,
    ...(end === null || (last ?? start ?? end) >= end ? [] : [end]),
  ]
  return points.slice(1).flatMap((until, index) => {
    const at = points[index] ?? until
    const minutes = wholeMinutes(at, until)
    return every.value.lt(minutes) ? [{ at, until, minutes }] : []
  })
}

/** Real whole minutes between two instants, whatever the clock on the wall did. */
export function wholeMinutes(from: string, until: string): number {
  return Math.floor((Date.parse(until) - Date.parse(from)) / 60_000)
}

type EntryRow = Extract<LedgerRow, { line: unknown }>
type GapRow = Extract<LedgerRow, { kind: 'gap' }>

function entryRows(theCase: Case, operations: readonly string[], observations: readonly Observation[]): EntryRow[] {
  const ofAll = <Found>(find: (operation: string) => readonly Found[]) => operations.flatMap(find)
  const shouts = ofAll((one) => shoutsOf(theCase, one)).flatMap(({ begun, ended }) => [
    begun,
    ...(ended ? [ended] : []),
  ])
  const emergencies = new Set(shouts.map(({ header }) => header.id))
  const beside = new Set(theCase.conflicts.flatMap(({ between }) => between))
  const weightOf = ({ header, body }: Stamp): StampWeight => {
    if (emergencies.has(header.id)) return 'emergency'
    return (clockMarks as readonly string[]).includes(body.checkpoint) ? 'mark' : 'step'
  }
  return [
    ...observations.map(
      (line) => ({ kind: 'observation', at: line.at, line, sideBySide: beside.has(line.header.id) }) as const,
    ),
    ...ofAll((one) => linesAbout(theCase, 'theatre-stamp', one)).map(
      (line) => ({ kind: 'stamp', at: line.at, line, weight: weightOf(line) }) as const,
    ),
    ...ofAll((one) => linesAbout(theCase, 'drug-given', one)).map(
      (line) => ({ kind: 'given', at: line.at, line }) as const,
    ),
  ]
}

/** The order of the journal; a gap stands behind what it follows. */
function inOrder(a: EntryRow | GapRow, b: EntryRow | GapRow): number {
  const idOf = (row: EntryRow | GapRow) => (row.kind === 'gap' ? '~' : row.line.header.id)
  return compareText(a.at, b.at) || compareText(idOf(a), idOf(b))
}

/** The day stands above its rows, also of an anaesthetic that goes over midnight; so does a change of the clock. */
function withDays(rows: readonly (EntryRow | GapRow)[], zone: string): LedgerRow[] {
  const [first] = rows
  const last = rows.at(-1)
  if (!first || !last) return []
  const changes = zoneChanges(zone, first.at, last.at)
    .map((change) => ({ kind: 'clock-change', at: new Date(change.at).toISOString(), change }) as const)
    .filter(({ at }) => at > first.at && at <= last.at)
  const marked: LedgerRow[] = []
  let day: string | null = null
  for (const row of rows) {
    while (changes[0] && changes[0].at <= row.at) marked.push(...changes.splice(0, 1))
    const today = dayOf({ at: row.at, zone })
    if (today !== day) marked.push({ kind: 'day', at: row.at, day: today })
    day = today
    marked.push(row)
  }
  return marked
}
