import { hashText, type Json } from '#core/journal/canonical.ts'
import type { Author, Entry, Subject } from '#core/journal/entry.ts'
import { type BodyOf, type KindName, kindNamed } from '#core/journal/fold.ts'
import { afterMinutes, type Moment, readMoment } from '#core/time/moment.ts'

/** When, by whom and about what an entry of an invented case was written. */
export type Writing = {
  /** On the wall clock of the practice: `2025-03-11 09:05`. */
  readonly at: string
  readonly by: string | Author
  readonly subject: Subject
  readonly supersedes?: readonly string[]
  readonly withdraws?: string
  readonly reason?: string
  /** Minutes between the event and its writing; one minute when nothing is said. */
  readonly writtenAfter?: number
  /** On which screen it was written; `desk-1` when nothing is said. */
  readonly device?: string
}

/**
 * Writes the entries of an invented case without clock and without chance: ids come from the case's name and the
 * number of the entry, so that the same case has the same bytes on every machine.
 */
export class Chart {
  readonly entries: Entry[] = []
  readonly clinic: string
  readonly stream: string
  readonly zone: string

  constructor(clinic: string, stream: string, zone: string) {
    this.clinic = clinic
    this.stream = stream
    this.zone = zone
  }

  /** Adds one entry and returns its id. */
  write<const Name extends KindName>(name: Name, writing: Writing, body: BodyOf<NoInfer<Name>>): string {
    const happenedAt = moment(writing.at, this.zone)
    const writtenAt = afterMinutes(happenedAt, writing.writtenAfter ?? 1).at
    const id = this.#nextId(writtenAt)
    this.entries.push({
      id,
      clinic: this.clinic,
      stream: this.stream,
      subject: writing.subject,
      kind: name,
      version: kindNamed(name)?.version ?? 1,
      body: body as unknown as Json,
      happenedAt,
      writtenAt,
      author: typeof writing.by === 'string' ? { kind: 'person', person: writing.by } : writing.by,
      device: {
        id: writing.device ?? 'desk-1',
        boot: 'boot-1',
        wallClock: writtenAt,
        monotonicMs: this.entries.length * 1000,
        offset: { ms: 0, ageMs: 0 },
      },
      supersedes: [...(writing.supersedes ?? [])],
      withdraws: writing.withdraws ?? null,
      refiledFrom: null,
      attachments: [],
      reason: writing.reason ?? null,
    })
    return id
  }

  /** An id of the shape of UUID version 7: time, then digits of a hash where a device would put chance. */
  #nextId(writtenAt: string): string {
    const time = Date.parse(writtenAt).toString(16).padStart(12, '0')
    const digits = hashText(`${this.clinic} ${this.stream} ${this.entries.length}`)
    return `${time.slice(0, 8)}-${time.slice(8)}-7${digits.slice(0, 3)}-8${digits.slice(3, 6)}-${digits.slice(6, 18)}`
  }
}

/** A moment from the wall clock of the zone; throws when the text is not one, because a demo must not guess. */
export function moment(text: string, zone: string): Moment {
  const read = readMoment(text, zone)
  if ('because' in read) throw new Error(`"${text}" is not a moment in ${zone}: ${read.because}.`)
  return read
}
