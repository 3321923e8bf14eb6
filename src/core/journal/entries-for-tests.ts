import type { Json } from './canonical.ts'
import type { Entry, Subject } from './entry.ts'
import { type BodyOf, type KindName, kindNamed } from './fold.ts'

/** An id of the shape of UUID version 7, the same on every run. `writer` keeps ids of several processes apart. */
export function testId(number: number, writer = 0): string {
  return `0190a7c2-${hex(writer, 4)}-7000-8000-${hex(number, 12)}`
}

function hex(number: number, digits: number): string {
  return number.toString(16).padStart(digits, '0')
}

/** What a test wants of its entry; everything else is filled in. Without a body the worked example of the kind is used. */
export type WantedEntry<Name extends KindName = KindName> = Partial<Omit<Entry, 'kind' | 'body'>> & {
  readonly kind?: Name
  readonly body?: BodyOf<NoInfer<Name>>
  /** Short for `happenedAt`: the instant, to the minute, in Europe/London, given by a person. */
  readonly at?: string
}

export type MakeEntry = <const Name extends KindName = 'note'>(wanted?: WantedEntry<Name>) => Entry

/**
 * Makes entries for tests without clock and without chance: the n-th entry has the n-th id and happens n minutes
 * after 1 March 2026, 08:00 UTC.
 *
 * @example
 * const makeEntry = entryMaker()
 * const first = makeEntry({ kind: 'weight' })
 * const corrected = makeEntry({ kind: 'weight', supersedes: [first.id], reason: 'Read from the wrong line.' })
 */
export function entryMaker(every: Partial<Entry> = {}, writer = 0): MakeEntry {
  let count = 0
  return (wanted = {}) => {
    count += 1
    const { kind: name = 'note', body, at, ...rest } = wanted
    const kind = kindNamed(name)
    if (!kind) throw new Error(`No kind is named ${name}.`)
    const then = at ?? new Date(Date.UTC(2026, 2, 1, 8) + count * 60_000).toISOString()
    return {
      id: testId(count, writer),
      clinic: 'clinic-1',
      stream: kind.subjects.every((subject) => subject === 'clinic') ? 'clinic' : 'case:0001',
      subject: subjectOf(kind.subjects[0] ?? 'clinic'),
      kind: name,
      version: kind.version,
      body: (body ?? kind.example) as unknown as Json,
      happenedAt: { at: then, zone: 'Europe/London', precision: 'minute', by: 'person' },
      writtenAt: then,
      author: { kind: 'person', person: 'person-surgeon' },
      device: { id: 'tablet-1', boot: 'boot-1', wallClock: then, monotonicMs: count * 60_000, offset: null },
      supersedes: [],
      withdraws: null,
      refiledFrom: null,
      attachments: [],
      reason: null,
      ...every,
      ...rest,
    }
  }
}

function subjectOf(kind: Subject['kind']): Subject {
  switch (kind) {
    case 'clinic':
      return { kind }
    case 'household':
      return { kind, household: 'household-1' }
    case 'animal':
      return { kind, animal: 'animal-1' }
    case 'ear':
      return { kind, animal: 'animal-1', side: 'LEFT' }
    case 'operation':
      return { kind, animal: 'animal-1', operation: 'operation-1' }
  }
}
