import type { Insertable, Selectable } from 'kysely'
import { StoreError } from '#actions/store.ts'
import { canonical, type Json } from '#core/journal/canonical.ts'
import type { Entry, Envelope, Header, StoredEntry } from '#core/journal/entry.ts'
import type { EntryTable, TargetRole } from './tables.ts'

/** The entry as its canonical bytes say it (Unicode NFC, nothing undefined), so that what is kept equals what is read back. */
export function asWritten(entry: Entry): Entry {
  return JSON.parse(canonical(entry as unknown as Json)) as Entry
}

export function rowOf(clinic: string, stored: StoredEntry): Insertable<EntryTable> {
  const { header, envelope } = stored
  return {
    clinic,
    position: envelope.position,
    stream: header.stream,
    sequence: envelope.sequence,
    id: header.id,
    kind: header.kind,
    header: canonical(header as unknown as Json),
    body: stored.erased === null ? canonical(stored.body) : null,
    body_hash: stored.bodyHash,
    received_at: envelope.receivedAt,
    corrected_at: envelope.correctedAt,
    order_certain: envelope.orderCertain ? 1 : 0,
    late: envelope.late,
    previous: envelope.previous,
    hash: envelope.hash,
    erased_on: stored.erased?.on ?? null,
    erased_by: stored.erased?.by ?? null,
  }
}

/**
 * Picks every column by name: a driver may add fields of its own to a row. Columns that repeat the header must agree with
 * it; they are not hashed, and one that was changed would hide an entry from its stream while every chain verifies.
 */
export function storedOf(row: Selectable<EntryTable>): StoredEntry {
  const header = parsed(row, row.header) as unknown as Header
  const repeated = ['id', 'stream', 'kind', 'clinic'] as const
  const differs = repeated.find((column) => header[column] !== row[column])
  if (differs) throw damaged(row, `its ${differs} stands there in two ways`)
  return {
    header,
    body: row.body === null ? null : parsed(row, row.body),
    bodyHash: row.body_hash,
    envelope: {
      position: row.position,
      sequence: row.sequence,
      receivedAt: row.received_at,
      correctedAt: row.corrected_at,
      orderCertain: row.order_certain === 1,
      late: row.late as Envelope['late'],
      previous: row.previous,
      hash: row.hash,
    },
    erased: row.erased_on === null ? null : { on: row.erased_on, by: row.erased_by ?? '' },
  }
}

function parsed(row: Selectable<EntryTable>, text: string): Json {
  try {
    return JSON.parse(text) as Json
  } catch {
    throw damaged(row, 'its text cannot be read')
  }
}

function damaged({ id, position }: Selectable<EntryTable>, how: string): StoreError {
  return new StoreError(
    'broken',
    `Entry ${id} at position ${position} is damaged on disk: ${how}. Keep the data as it is and restore the last backup into a new place.`,
  )
}

export type Target = { readonly entry: string; readonly role: TargetRole; readonly target: string }

/** What an entry points at: what it supersedes or withdraws, and what an erasure order erases. */
export function targetsIn(header: Header, body: Json | null): Target[] {
  const erased = erasedBy(header, body)
  const all: (readonly [TargetRole, string])[] = [
    ...header.supersedes.map((id) => ['supersedes', id] as const),
    ...(header.withdraws === null ? [] : [['withdraws', header.withdraws] as const]),
    ...(erased === undefined ? [] : [['erases', erased] as const]),
  ]
  const unique = new Map(all.map(([role, target]) => [`${role} ${target}`, { entry: header.id, role, target }]))
  return [...unique.values()]
}

/** The id that an erasure order erases. */
export function erasedBy(header: Pick<Header, 'kind'>, body: Json | null): string | undefined {
  if (header.kind !== 'erasure' || typeof body !== 'object' || body === null || Array.isArray(body)) return undefined
  const { entry } = body as { readonly [key: string]: Json }
  return typeof entry === 'string' ? entry : undefined
}

/** A list in pieces that fit the limits on values of one statement in both stores. */
export function* inPieces<Item>(items: readonly Item[], size = 500): Generator<readonly Item[]> {
  for (let start = 0; start < items.length; start += size) yield items.slice(start, start + size)
}
