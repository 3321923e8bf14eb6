import type { Kysely } from 'kysely'
import {
  type CaseRow,
  type KeptAside,
  type ListTexts,
  type OwedRow,
  type RegisterName,
  type RegisterRow,
  type Remaking,
  type Store,
  StoreError,
} from '#actions/store.ts'
import { hashBytes } from '#core/journal/canonical.ts'
import type { Entry, StoredEntry } from '#core/journal/entry.ts'
import { currentIn } from './current-rows.ts'
import { storedOf } from './entry-rows.ts'
import { byDueDate, caseOf, listTextsIn, owedOf } from './list-texts.ts'
import { joined, keptAsideOf, registersIn } from './projecting.ts'
import { remakingIn } from './remaking.ts'
import type { Tables } from './tables.ts'

const pageSize = 500

/** What is read of a store; nothing here writes. */
type Reads = Pick<
  Store,
  | 'stream'
  | 'entries'
  | 'entry'
  | 'joined'
  | 'after'
  | 'ofKinds'
  | 'keptAsideOf'
  | 'keptAside'
  | 'erasures'
  | 'registers'
  | 'current'
  | 'file'
  | 'fileHashes'
  | 'owed'
  | 'cases'
  | 'operated'
  | 'lists'
  | 'remaking'
  | 'clinics'
>

/** The reading half of the store, in the common subset of both databases. */
export class JournalReader implements Reads {
  readonly #db: Kysely<Tables>
  readonly #explain: (error: unknown) => StoreError | undefined

  constructor(db: Kysely<Tables>, explain: (error: unknown) => StoreError | undefined) {
    this.#db = db
    this.#explain = explain
  }

  async stream(clinic: string, stream: string): Promise<StoredEntry[]> {
    const rows = await this.#read((db) =>
      db
        .selectFrom('entries')
        .selectAll()
        .where('clinic', '=', clinic)
        .where('stream', '=', stream.normalize('NFC'))
        .orderBy('sequence')
        .execute(),
    )
    return rows.map(storedOf)
  }

  async *entries(clinic: string): AsyncIterable<StoredEntry> {
    for (let after = 0; ; ) {
      const rows = await this.#read((db) =>
        db
          .selectFrom('entries')
          .selectAll()
          .where('clinic', '=', clinic)
          .where('position', '>', after)
          .orderBy('position')
          .limit(pageSize)
          .execute(),
      )
      for (const row of rows) yield storedOf(row)
      const last = rows.at(-1)
      if (!last || rows.length < pageSize) return
      after = last.position
    }
  }

  entry(clinic: string, id: string): Promise<StoredEntry | undefined> {
    return this.#read((db) => entryIn(db, clinic, id))
  }

  async joined(clinic: string, stream: string): Promise<string[]> {
    const streams = await this.#read((db) => joined(db, clinic, [stream.normalize('NFC')]))
    return [...streams].sort()
  }

  async position(clinic: string): Promise<number> {
    const row = await this.#read((db) =>
      db
        .selectFrom('entries')
        .select(({ fn }) => fn.max('position').as('position'))
        .where('clinic', '=', clinic)
        .executeTakeFirst(),
    )
    return Number(row?.position ?? 0)
  }

  async after(clinic: string, streams: readonly string[], position: number): Promise<StoredEntry[]> {
    if (streams.length === 0) return []
    const rows = await this.#read((db) =>
      db
        .selectFrom('entries')
        .selectAll()
        .where('clinic', '=', clinic)
        .where('stream', 'in', streams)
        .where('position', '>', position)
        .orderBy('position')
        .execute(),
    )
    return rows.map(storedOf)
  }

  async ofKinds(clinic: string, kinds: readonly string[]): Promise<StoredEntry[]> {
    if (kinds.length === 0) return []
    const rows = await this.#read((db) =>
      db
        .selectFrom('entries')
        .selectAll()
        .where('clinic', '=', clinic)
        .where('kind', 'in', kinds)
        .orderBy('position')
        .execute(),
    )
    return rows.map(storedOf)
  }

  async keptAsideOf(clinic: string, streams: readonly string[]): Promise<KeptAside[]> {
    return streams.length === 0 ? [] : this.#read((db) => keptAsideOf(db, clinic, streams))
  }

  async keptAside(clinic: string): Promise<KeptAside[]> {
    const rows = await this.#read((db) =>
      db.selectFrom('kept_aside').select(['id', 'received_at', 'text']).where('clinic', '=', clinic).execute(),
    )
    return rows
      .map(({ id, received_at, text }) => ({ id, receivedAt: received_at, text }))
      .sort(by((kept) => [kept.receivedAt, kept.id, kept.text]))
  }

  async erasures(clinic: string): Promise<Entry[]> {
    const rows = await this.#read((db) =>
      db
        .selectFrom('entries')
        .select(['header', 'body'])
        .where('clinic', '=', clinic)
        .where('kind', '=', 'erasure')
        .orderBy('position')
        .execute(),
    )
    return rows.map(({ header, body }) => ({ ...JSON.parse(header), body: JSON.parse(body ?? 'null') }) as Entry)
  }

  async registers(clinic: string): Promise<RegisterRow[]> {
    return this.#read((db) => registersIn(db, clinic))
  }

  current(clinic: string, register: RegisterName): Promise<RegisterRow[]> {
    return this.#read((db) => currentIn(db, clinic, register))
  }

  async file(clinic: string, hash: string) {
    const row = await this.#read((db) =>
      db
        .selectFrom('files')
        .select(['media_type', 'bytes'])
        .where('clinic', '=', clinic)
        .where('hash', '=', hash)
        .executeTakeFirst(),
    )
    if (!row) return undefined
    const bytes = new Uint8Array(row.bytes)
    if (hashBytes(bytes) !== hash) throw new StoreError('broken', `File ${hash} was changed after it was stored.`)
    return { mediaType: row.media_type, bytes }
  }

  async fileHashes(clinic: string): Promise<string[]> {
    const rows = await this.#read((db) => db.selectFrom('files').select('hash').where('clinic', '=', clinic).execute())
    return rows.map(({ hash }) => hash).sort()
  }

  async owed(clinic: string): Promise<OwedRow[]> {
    const rows = await this.#read((db) => db.selectFrom('owed').selectAll().where('clinic', '=', clinic).execute())
    return rows.map(owedOf).sort(byDueDate)
  }

  async cases(clinic: string): Promise<CaseRow[]> {
    const rows = await this.#read((db) => db.selectFrom('cases').selectAll().where('clinic', '=', clinic).execute())
    return rows.map(caseOf).sort(by((row) => [row.stream]))
  }

  async operated(clinic: string): Promise<string[]> {
    const rows = await this.#read((db) =>
      db.selectFrom('cases').select('operated').where('clinic', '=', clinic).where('operated', '<>', '[]').execute(),
    )
    return rows.map(({ operated }) => operated)
  }

  lists(clinic: string, since: number | null): Promise<ListTexts> {
    return this.#read((db) => listTextsIn(db, clinic, since))
  }

  remaking(clinic: string): Promise<Remaking | null> {
    return this.#read((db) => remakingIn(db, clinic))
  }

  async clinics(): Promise<string[]> {
    const rows = await this.#read((db) => db.selectFrom('clinics').select('clinic').execute())
    return rows.map(({ clinic }) => clinic).sort()
  }

  async #read<Result>(reading: (db: Kysely<Tables>) => Promise<Result>): Promise<Result> {
    try {
      return await reading(this.#db)
    } catch (error) {
      throw this.#explain(error) ?? error
    }
  }

  /** Read committed is enough, because every write takes the clinic's turn first. */
}

export async function entryIn(db: Kysely<Tables>, clinic: string, id: string): Promise<StoredEntry | undefined> {
  const query = db.selectFrom('entries').selectAll().where('clinic', '=', clinic).where('id', '=', id)
  const row = await query.executeTakeFirst()
  return row && storedOf(row)
}

/** Orders by texts as both stores and every machine order them: by code unit, never by a database's collation. */
function by<Item>(keys: (item: Item) => readonly string[]): (a: Item, b: Item) => number {
  return (a, b) => {
    const left = keys(a)
    const right = keys(b)
    const at = left.findIndex((key, index) => key !== right[index])
    if (at === -1) return 0
    return (left[at] ?? '') < (right[at] ?? '') ? -1 : 1
  }
}
