import type { Transaction } from 'kysely'
import { type KeptAside, type RegisterRow, StoreError } from '#actions/store.ts'
import { canonical, type Json } from '#core/journal/canonical.ts'
import { type Break, ChainWalk } from '#core/journal/chain.ts'
import type { StoredEntry } from '#core/journal/entry.ts'
import { keepAside, takeTurn } from './accepting.ts'
import { inPieces, rowOf, targetsIn } from './entry-rows.ts'
import type { Tables } from './tables.ts'

type Tx = Transaction<Tables>

/** Writes a journal with the envelopes it already has. The clinic must be empty and every chain must verify. */
export async function restoreInTurn(
  tx: Tx,
  clinic: string,
  entries: AsyncIterable<StoredEntry>,
  rows: readonly RegisterRow[],
  keptAside: readonly KeptAside[],
): Promise<void> {
  const position = await takeTurn(tx, clinic)
  if (position > 0 || (await hasRegisters(tx, clinic))) {
    throw new StoreError('not-empty', `Clinic ${clinic} already has entries: restore goes into an empty clinic only.`)
  }
  const last = await writeVerified(tx, clinic, entries)
  await tx.updateTable('clinics').set({ position: last }).where('clinic', '=', clinic).execute()
  for (const some of inPieces(rows)) {
    await tx
      .insertInto('register_rows')
      .values(some.map((row) => registerRowOf(clinic, row)))
      .execute()
  }
  for (const kept of keptAside) await keepAside(tx, clinic, kept)
}

export function registerRowOf(clinic: string, { register, id, revision, body, by, at }: RegisterRow) {
  const text = body === null ? null : canonical(body as unknown as Json)
  return { clinic, register, id, revision, body: text, written_by: by, written_at: at }
}

async function hasRegisters(tx: Tx, clinic: string): Promise<boolean> {
  const rows = await tx.selectFrom('register_rows').select('id').where('clinic', '=', clinic).limit(1).execute()
  return rows.length > 0
}

async function writeVerified(tx: Tx, clinic: string, entries: AsyncIterable<StoredEntry>): Promise<number> {
  const walk = new ChainWalk()
  const seen = new Set<string>()
  let last = 0
  for await (const page of inPages(entries, 200)) {
    for (const stored of page) {
      refuseBreak(walk.next(stored))
      const { id, clinic: of } = stored.header
      if (of !== clinic) throw new StoreError('broken', `Entry ${id} belongs to clinic ${of}, not to ${clinic}.`)
      if (seen.has(id)) throw new StoreError('broken', `Entry ${id} stands twice in what was to be restored.`)
      seen.add(id)
      last = stored.envelope.position
    }
    await tx
      .insertInto('entries')
      .values(page.map((stored) => rowOf(clinic, stored)))
      .execute()
    const targets = page.flatMap(({ header, body }) => targetsIn(header, body))
    for (const some of inPieces(targets)) {
      await tx
        .insertInto('targets')
        .values(some.map((target) => ({ clinic, ...target })))
        .execute()
    }
  }
  refuseBreak(walk.finish())
  return last
}

function refuseBreak(found: Break | undefined): void {
  if (!found) return
  const { entry, position, because } = found
  throw new StoreError('broken', `Nothing was restored: entry ${entry} at position ${position} is broken (${because}).`)
}

async function* inPages<Item>(items: AsyncIterable<Item>, size: number): AsyncGenerator<Item[]> {
  let page: Item[] = []
  for await (const item of items) {
    page.push(item)
    if (page.length < size) continue
    yield page
    page = []
  }
  if (page.length > 0) yield page
}
