import type { CaseFile } from './clinic.ts'
import type { StoredEntry } from './entry.ts'
import { type Case, type Foldable, fold } from './fold.ts'
import type { Row } from './journal-file.ts'
import { type ClinicRow, type ContactRow, clinicRow, contactRow, type PersonRow, personRow } from './registers.ts'

/** What a case is made from: the clinic's registers and entries, accepted ones and those still on this device. */
export type Journal = { readonly clinic: string; readonly rows: readonly Row[]; readonly entries: readonly Foldable[] }

/** The streams of a journal that are cases, in order of their first entry. */
export function caseStreams(entries: readonly Foldable[]): string[] {
  return [...new Set(entries.map(streamOf))].filter((stream) => stream.startsWith('case:'))
}

/**
 * One case with the clinic around it. The streams that a live `merge` entry names are folded in with it, in both
 * directions; nothing is renamed. Undefined while the journal has no clinic line: a case needs the clinic it belongs to.
 */
export function caseFileOf(journal: Journal, stream: string): CaseFile | undefined {
  const register = currentRows(journal.rows)
  const clinic = register.clinic.values().next().value
  if (!clinic) return undefined
  const streams = new Set(mergedStreams(journal.entries, stream))
  return {
    clinicId: journal.clinic,
    clinic,
    people: register.people,
    contacts: register.contacts,
    closedDays: register.closedDays,
    stream,
    theCase: fold(journal.entries.filter((entry) => streams.has(streamOf(entry)))),
    house: fold(journal.entries.filter((entry) => streamOf(entry) === 'clinic')),
  }
}

function streamOf(entry: Foldable): string {
  return isStored(entry) ? entry.header.stream : entry.stream
}

function kindOf(entry: Foldable): string {
  return isStored(entry) ? entry.header.kind : entry.kind
}

function isStored(entry: Foldable): entry is StoredEntry {
  return 'envelope' in entry
}

type CurrentRows = {
  readonly clinic: Map<string, ClinicRow>
  readonly people: Map<string, PersonRow>
  readonly contacts: Map<string, ContactRow>
  readonly closedDays: string[]
}

/** The highest revision of every row that was not erased. */
export function currentRows(rows: readonly Row[]): CurrentRows {
  const latest = new Map<string, Row>()
  for (const row of rows) {
    const key = `${row.register} ${row.id}`
    const before = latest.get(key)
    if (!before || before.revision < row.revision) latest.set(key, row)
  }
  const current: CurrentRows = { clinic: new Map(), people: new Map(), contacts: new Map(), closedDays: [] }
  for (const { register, id, body } of latest.values()) {
    if (body === null) continue
    if (register === 'clinic') current.clinic.set(id, clinicRow.parse(body))
    if (register === 'person') current.people.set(id, personRow.parse(body))
    if (register === 'contact') current.contacts.set(id, contactRow.parse(body))
    if (register === 'closed-day') current.closedDays.push(String(body.day))
  }
  current.closedDays.sort()
  return current
}

/** The stream and every stream that merges join to it. */
function mergedStreams(entries: readonly Foldable[], stream: string): string[] {
  const joins = new Map<string, string[]>()
  const join = (from: string, to: string) => joins.set(from, [...(joins.get(from) ?? []), to])
  for (const one of caseStreams(entries.filter((entry) => kindOf(entry) === 'merge'))) {
    const theCase: Case = fold(entries.filter((entry) => streamOf(entry) === one))
    for (const { body } of theCase.live('merge')) {
      join(one, body.otherStream)
      join(body.otherStream, one)
    }
  }
  const found = new Set([stream])
  for (const one of found) for (const other of joins.get(one) ?? []) found.add(other)
  return [...found]
}
