import { ownCounting } from '#content/evidence/own-counting.ts'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { type OperatedEar, operatedEarsOf } from '#core/evidence/own/operated-ear.ts'
import { compareText } from '#core/journal/compare-text.ts'
import type { StoredEntry } from '#core/journal/entry.ts'
import { type BodyOf, fold, lineOfOne } from '#core/journal/fold.ts'
import type { Row } from '#core/journal/journal-file.ts'
import { type EarChange, earChanges } from '#core/yearly/ear-changes.ts'
import { caseFile } from '../journal/case-file.ts'
import type { Projected } from '../store.ts'

type About = Pick<Projected, 'clinic' | 'stream' | 'entries' | 'clinicEntries' | 'linked' | 'rows'>
type Report = { readonly year: number; readonly lookedAt: string; readonly readUntil: number }

export type ChangedSince = {
  readonly changes: readonly EarChange[]
  /** The entries with which something of it changed, in the order in which they came. */
  readonly causes: readonly StoredEntry[]
}

/** With more entries since than this every one of them is named: to try each would take seconds. */
const mostTried = 40

/**
 * What of one case contradicts a frozen report: its ears as the journal knew them up to the position that was read, and as
 * it knows them now, both by the rules that the house had then.
 */
export function changedSince(report: Report, about: About): ChangedSince {
  const nothing = { changes: [], causes: [] }
  const all = [...about.entries, ...about.linked]
  const since = all
    .filter(({ envelope }) => envelope.position > report.readUntil)
    .sort((a, b) => a.envelope.position - b.envelope.position)
  if (since.length === 0 || !all.some((entry) => mayCutIn(report.year, entry))) return nothing
  const then = knownAt(report.readUntil, report, about)
  const changesAt = (position: number) => [
    ...ofThisCase(earChanges(then, knownAt(position, report, about), report), about),
    ...parted(position, then, report, about),
  ]
  const newest = since.at(-1)?.envelope.position ?? report.readUntil
  const changes = changesAt(newest)
  if (changes.length === 0) return nothing
  return { changes, causes: since.length > mostTried ? since : causesOf(since, changesAt) }
}

function causesOf(since: readonly StoredEntry[], changesAt: (position: number) => readonly EarChange[]): StoredEntry[] {
  let before = '[]'
  return since.filter(({ envelope }) => {
    const now = JSON.stringify(changesAt(envelope.position))
    const changed = now !== before
    before = now
    return changed
  })
}

/**
 * Whether an entry says, or said, that a cut was made in a year or within a day of it, whatever the zone. Where none does, no
 * ear of that year was ever in the case, and nothing is folded to find that out: this is asked for every frozen year, at
 * every entry of every case.
 */
function mayCutIn(year: number, entry: StoredEntry): boolean {
  const at = cutIn(entry)
  if (at === null) return false
  const years = [-1, 1].map((days) => new Date(Date.parse(at) + days * 86_400_000).getUTCFullYear())
  return years.includes(year)
}

function cutIn(entry: StoredEntry): string | null {
  const { kind } = entry.header
  if (kind === 'theatre-stamp') return entry.envelope.correctedAt
  if (kind !== 'operation-summary') return null
  const { known, body } = lineOfOne(entry)
  return known && body !== null ? (body as unknown as BodyOf<'operation-summary'>).incisionAt.at : null
}

/** The ears of the case and of those joined to it, from what had come up to a position. */
function knownAt(position: number, { readUntil }: Report, about: About): OperatedEar[] {
  const { clinic, rows, clinicEntries } = about
  const upTo = (entries: readonly StoredEntry[], last: number) =>
    entries.filter(({ envelope }) => envelope.position <= last)
  const own = upTo([...about.entries, ...about.linked], position)
  const entries = [...upTo(clinicEntries, readUntil), ...own]
  const streams = [...new Set(own.map(({ header }) => header.stream))].sort(compareText)
  const ears = streams.flatMap((stream) =>
    operatedEarsOf(caseFile({ clinic, rows: rows as readonly Row[], entries }, stream), {
      ...owedRules,
      counting: ownCounting,
    }),
  )
  return [...new Map(ears.map((ear) => [ear.operation, ear])).values()]
}

/** A joined case owes for its own ears by itself. */
function ofThisCase(changes: readonly EarChange[], { entries }: About): EarChange[] {
  const own = new Set(
    entries.flatMap(({ header }) => (header.subject.kind === 'operation' ? [header.subject.operation] : [])),
  )
  return changes.filter(({ operation }) => own.has(operation))
}

/** Cases that were one animal when it was frozen and are two now: the other one is not at hand any more. */
function parted(
  position: number,
  then: readonly OperatedEar[],
  { year, readUntil }: Report,
  { entries }: About,
): EarChange[] {
  const joinedAt = (last: number) =>
    fold(entries.filter(({ envelope }) => envelope.position <= last))
      .live('merge')
      .map(({ body }) => body.otherStream)
  const now = joinedAt(position)
  if (joinedAt(readUntil).every((other) => now.includes(other))) return []
  return then
    .filter(({ on }) => on.startsWith(`${year}-`))
    .map(({ operation, side }) => ({ operation, side, what: 'same-animal', before: 'as-then', after: 'otherwise-now' }))
}
