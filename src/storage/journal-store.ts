import type { Kysely, Transaction } from 'kysely'
import type { Accounts } from '#actions/people/accounts.ts'
import {
  type Acceptance,
  type CaseRow,
  type Change,
  type ChangeListener,
  type KeptAside,
  type ListTexts,
  type OwedRow,
  type Projector,
  type RegisterName,
  type RegisterRow,
  type Store,
  StoreError,
} from '#actions/store.ts'
import { hashBytes } from '#core/journal/canonical.ts'
import type { Entry, Envelope, StoredEntry } from '#core/journal/entry.ts'
import { acceptInTurn, takeTurn } from './accepting.ts'
import { AccountsStore } from './accounts-store.ts'
import { currentIn } from './current-rows.ts'
import { storedOf } from './entry-rows.ts'
import { eraseAsOrdered, isErased } from './erasing.ts'
import { byDueDate, caseOf, listTextsIn, owedOf, writeListTextsOf } from './list-texts.ts'
import { type MigrationDialect, migrate } from './migrate.ts'
import { joined, keptAsideOf, projectAll, projectTouched, registersIn } from './projecting.ts'
import { registerRowOf, restoreInTurn } from './restoring.ts'
import type { Tables } from './tables.ts'

/** What the two stores do differently: opening, locking, closing, and what their errors mean. */
export type StoreDialect = MigrationDialect & {
  readonly db: Kysely<Tables>
  /** What is opened, for sentences: the data file or the database, never with a password. */
  readonly where: string
  /** Throws a StoreError while there is too little space to write safely. */
  readonly beforeWrite: () => void
  /** The sentence for trouble with disk or database; undefined for anything else. */
  readonly explain: (error: unknown) => StoreError | undefined
  /** Drops what the engine still holds of bodies that were erased. */
  readonly forgetErased: () => Promise<void>
  /** Called inside the transaction of a write: where other processes listen, they are told when it is committed. */
  readonly announce: (tx: Transaction<Tables>, change: Change) => Promise<void>
  /** Called when a write is on disk: where only this process listens, it is told now. */
  readonly committed: (change: Change) => void
  readonly watch: (listener: ChangeListener) => Promise<() => void>
  readonly close: () => Promise<void>
}

const pageSize = 500

/** The journal, and beside it in the same database the accounts. */
export type OpenStore = Store & { readonly accounts: Accounts }

/** Opens the journal: brings its tables to this program's version and gives the store. On failure nothing stays open. */
export async function openJournal(dialect: StoreDialect, project: Projector): Promise<OpenStore> {
  try {
    const migrated = await migrate(dialect.db, dialect, dialect.where)
    const store = new JournalStore(dialect, project)
    // New tables may want what the journal has always said: the lists are made anew.
    if (migrated) for (const clinic of await store.clinics()) await store.rebuild(clinic)
    return store
  } catch (error) {
    await dialect.close().catch(() => undefined)
    throw dialect.explain(error) ?? error
  }
}

/** The one implementation of Store, in the common subset of both databases. */
class JournalStore implements OpenStore {
  readonly accounts: Accounts
  readonly #dialect: StoreDialect
  readonly #db: Kysely<Tables>
  readonly #project: Projector

  constructor(dialect: StoreDialect, project: Projector) {
    this.#dialect = dialect
    this.#db = dialect.db
    this.#project = project
    this.accounts = new AccountsStore(dialect)
  }

  accept(
    clinic: string,
    entries: readonly Entry[],
    receivedAt: string,
    late: Envelope['late'] = null,
  ): Promise<Acceptance[]> {
    return this.#acceptAndErase(clinic, entries, receivedAt, late).then(({ acceptances }) => acceptances)
  }

  async #acceptAndErase(clinic: string, entries: readonly Entry[], receivedAt: string, late: Envelope['late']) {
    const result = await this.#change(clinic, async (tx, touch) => {
      const { acceptances, streams, erasing, before } = await acceptInTurn(tx, { clinic, entries, receivedAt, late })
      const accepted = acceptances.filter(({ outcome }) => outcome === 'accepted').map(({ id }) => id)
      const erased = erasing ? await eraseAsOrdered(tx, clinic, accepted) : []
      const touched = new Set([...streams, ...erased.map(({ stream }) => stream)])
      const news = { before, erased: new Set(erased.map(({ stream }) => stream)) }
      if (touched.size > 0) await projectTouched(tx, clinic, touched, news, this.#project)
      touch(touched)
      const now = erased.length === 0 ? acceptances : await this.#readAgain(tx, clinic, acceptances, erased)
      return { acceptances: now, erased: erased.map(({ id }) => id) }
    })
    if (result.erased.length > 0) await this.#dialect.forgetErased()
    return result
  }

  /** An entry that was erased on arrival is answered as it now stands. */
  async #readAgain(
    tx: Transaction<Tables>,
    clinic: string,
    acceptances: readonly Acceptance[],
    erased: readonly { id: string }[],
  ): Promise<Acceptance[]> {
    const gone = new Set(erased.map(({ id }) => id))
    const again: Acceptance[] = []
    for (const acceptance of acceptances) {
      const stored = gone.has(acceptance.id) ? await entryIn(tx, clinic, acceptance.id) : undefined
      again.push(acceptance.outcome === 'accepted' && stored ? { ...acceptance, stored } : acceptance)
    }
    return again
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

  async restore(
    clinic: string,
    entries: AsyncIterable<StoredEntry>,
    rows: readonly RegisterRow[],
    keptAside: readonly KeptAside[] = [],
  ): Promise<void> {
    const erased = await this.#change(clinic, async (tx, touch) => {
      await restoreInTurn(tx, clinic, entries, rows, keptAside)
      touch(['clinic'])
      const now = await eraseAsOrdered(tx, clinic)
      await projectAll(tx, clinic, this.#project)
      return now
    })
    if (erased.length > 0) await this.#dialect.forgetErased()
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

  async applyErasures(clinic: string, orders: readonly Entry[], receivedAt: string): Promise<string[]> {
    const stray = orders.find(({ kind }) => kind !== 'erasure')
    if (stray) throw new Error(`Entry ${stray.id} on the erase list is no erasure order but ${stray.kind}.`)
    return (await this.#acceptAndErase(clinic, orders, receivedAt, null)).erased
  }

  async putRegister(clinic: string, row: Omit<RegisterRow, 'revision'>): Promise<RegisterRow> {
    const written = await this.#change(clinic, async (tx, touch) => {
      await takeTurn(tx, clinic)
      touch([`register:${row.register}`])
      const ofRow = { clinic, register: row.register, id: row.id }
      const before = await tx
        .selectFrom('register_rows')
        .select('revision')
        .where((is) => is.and(ofRow))
        .orderBy('revision', 'desc')
        .limit(1)
        .execute()
      const next = { ...row, revision: (before[0]?.revision ?? 0) + 1 }
      await tx.insertInto('register_rows').values(registerRowOf(clinic, next)).execute()
      // A row that is erased is erased in all its revisions; who wrote when stays.
      if (row.body === null) {
        const all = tx.updateTable('register_rows').set({ body: null })
        await all.where((is) => is.and(ofRow)).execute()
      }
      // What falls due hangs on the clinic's zone and its closed days.
      if (row.register === 'contact') await writeListTextsOf(tx, clinic, row.id)
      if (row.register === 'clinic' || row.register === 'closed-day') await projectAll(tx, clinic, this.#project)
      return next
    })
    if (row.body === null) await this.#dialect.forgetErased()
    return written
  }

  async registers(clinic: string): Promise<RegisterRow[]> {
    return this.#read((db) => registersIn(db, clinic))
  }

  current(clinic: string, register: RegisterName): Promise<RegisterRow[]> {
    return this.#read((db) => currentIn(db, clinic, register))
  }

  async putFile(clinic: string, hash: string, mediaType: string, bytes: Uint8Array): Promise<void> {
    if (hashBytes(bytes) !== hash) throw new StoreError('broken', `The file is not the one its name says (${hash}).`)
    await this.#write(async (tx) => {
      await takeTurn(tx, clinic)
      if (await isErased(tx, clinic, hash)) return
      await tx
        .insertInto('files')
        .values({ clinic, hash, media_type: mediaType, bytes: Buffer.from(bytes) })
        .onConflict((conflict) => conflict.doNothing())
        .execute()
    })
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

  lists(clinic: string, since: number | null): Promise<ListTexts> {
    return this.#read((db) => listTextsIn(db, clinic, since))
  }

  rebuild(clinic: string): Promise<number> {
    return this.#change(clinic, async (tx, touch) => {
      await takeTurn(tx, clinic)
      touch(['clinic'])
      return projectAll(tx, clinic, this.#project)
    })
  }

  async clinics(): Promise<string[]> {
    const rows = await this.#read((db) => db.selectFrom('clinics').select('clinic').execute())
    return rows.map(({ clinic }) => clinic).sort()
  }

  watch(listener: ChangeListener): Promise<() => void> {
    return this.#dialect.watch(listener)
  }

  close(): Promise<void> {
    return this.#dialect.close()
  }

  /** A write that whoever watches is told of, once it is on disk: `touch` names what it changed. */
  async #change<Result>(
    clinic: string,
    writing: (tx: Transaction<Tables>, touch: (streams: Iterable<string>) => void) => Promise<Result>,
  ): Promise<Result> {
    let change: Change | undefined
    const result = await this.#write(async (tx) => {
      const streams = new Set<string>()
      const made = await writing(tx, (touched) => {
        for (const stream of touched) streams.add(stream)
      })
      change =
        streams.size === 0 ? undefined : { clinic, position: await positionIn(tx, clinic), streams: [...streams] }
      if (change) await this.#dialect.announce(tx, change)
      return made
    })
    if (change) this.#dialect.committed(change)
    return result
  }

  async #read<Result>(reading: (db: Kysely<Tables>) => Promise<Result>): Promise<Result> {
    try {
      return await reading(this.#db)
    } catch (error) {
      throw this.#dialect.explain(error) ?? error
    }
  }

  /** Read committed is enough, because every write takes the clinic's turn first. */
  async #write<Result>(writing: (tx: Transaction<Tables>) => Promise<Result>): Promise<Result> {
    this.#dialect.beforeWrite()
    try {
      return await this.#db.transaction().setIsolationLevel('read committed').execute(writing)
    } catch (error) {
      throw this.#dialect.explain(error) ?? error
    }
  }
}

async function positionIn(db: Kysely<Tables>, clinic: string): Promise<number> {
  const query = db.selectFrom('clinics').select('position').where('clinic', '=', clinic)
  return (await query.executeTakeFirst())?.position ?? 0
}

async function entryIn(db: Kysely<Tables>, clinic: string, id: string): Promise<StoredEntry | undefined> {
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
