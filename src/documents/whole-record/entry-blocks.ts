import { kindsInEnglish } from '#content/wording/app-kinds.ts'
import { reportInEnglish } from '#content/wording/report.ts'
import { wholeRecordInEnglish as say } from '#content/wording/whole-record.ts'
import { authorNamed, type CaseFile, personNamed } from '#core/journal/clinic.ts'
import type { KindName, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { dayOf, daysBetween } from '#core/time/calendar-day.ts'
import { sayMoment } from '#core/time/moment.ts'
import { whenOf } from '../case/case-words.ts'
import { type Block, facts, heading, strong, type Words } from '../render/model.ts'
import { entryRows, subjectOf } from './entry-rows.ts'

type Pair = readonly [string, Words]

/** One entry as it was written, with everything that became of it. */
export function entryBlocks(line: Line, file: CaseFile, numberOf: (id: string) => string): Block[] {
  const { kind } = line.header
  const title = { number: numberOf(line.header.id), when: whenOf(line), kind: kindsInEnglish[kind as KindName] ?? kind }
  return [
    heading(2, fill(say.entry, title)),
    facts(
      ...becameOf(line, file, numberOf),
      ...writing(line, file),
      ...content(line, file),
      ...afterwards(line, numberOf),
    ),
  ]
}

/** What became of it stands first: nobody reads a dose before its correction. */
function becameOf(line: Line, file: CaseFile, numberOf: (id: string) => string): Pair[] {
  const superseded = line.supersededBy.map((id): Pair => {
    const by = file.theCase.line(id)
    const who = by ? authorNamed(file, by.header.author) : say.notHere
    const entry = fill(say.numberOf, { number: numberOf(id) })
    return [say.superseded, [strong(fill(say.supersededBy, { entry, who, reason: by?.header.reason ?? say.noReason }))]]
  })
  const withdrawn = line.withdrawnBy.map((id): Pair => {
    const by = file.theCase.line(id)
    const who = by ? authorNamed(file, by.header.author) : say.notHere
    const when = by ? whenOf(by) : say.notHere
    return [say.withdrawn, [strong(fill(say.withdrawnBy, { who, when, reason: reasonOf(by) }))]]
  })
  return [...superseded, ...withdrawn]
}

function reasonOf(by: Line | undefined): string {
  if (by?.header.reason) return by.header.reason
  const body = by?.body
  const because = typeof body === 'object' && body !== null && 'because' in body ? body.because : null
  return typeof because === 'string' ? because : say.noReason
}

function writing(line: Line, file: CaseFile): Pair[] {
  const { header, late, orderCertain } = line
  const { zone } = file.clinic
  const when = sayMoment({ at: header.writtenAt, zone, precision: 'minute', by: 'clock' })
  const who = authorNamed(file, header.author)
  const fine = header.happenedAt.precision === 'minute' || header.happenedAt.precision === 'second'
  const days = fine ? daysBetween(dayOf({ at: line.at, zone }), dayOf({ at: header.writtenAt, zone })) : 0
  const marks = [
    ...(late ? [reportInEnglish.lateMarks[late]] : []),
    ...(days > 0 ? [sayCount(say.daysLater, days)] : []),
    ...(orderCertain ? [] : [say.orderUncertain]),
  ]
  return [
    [say.aboutWhat, subjectOf(line, file)],
    [say.written, fill(say.writtenBy, { when, who, version: String(header.version) })],
    ...(marks.length > 0 ? [[say.late, [strong(marks.join('; '))]] as const] : []),
  ]
}

function content(line: Line, file: CaseFile): Pair[] {
  if (line.erased) return [[say.erased, erasure(line, file)]]
  if (!line.known) return [[say.content, say.unreadable]]
  return entryRows(line, file)
}

function erasure({ header }: Line, file: CaseFile): string {
  const order = file.house.live('erasure').find(({ body }) => body.entry === header.id)
  if (!order) return say.erasedUnknown
  return fill(say.erasedBy, { day: whenOf(order), who: personNamed(file, order.body.orderedBy) })
}

function afterwards({ header }: Line, numberOf: (id: string) => string): Pair[] {
  if (header.supersedes.length === 0) return []
  const entries = header.supersedes.map((id) => fill(say.numberOf, { number: numberOf(id) })).join(', ')
  return [[say.replaces, header.reason ? `${entries}; ${header.reason}` : entries]]
}
