import type { Kysely, Transaction } from 'kysely'
import type { OwnerLinks } from '#actions/owner/owner-links.ts'
import type { Accounts } from '#actions/people/accounts.ts'
import {
  type Acceptance,
  type Change,
  type ChangeListener,
  type KeptAside,
  type Projector,
  type RegisterRow,
  type Remaking,
  remadeLists,
  type Store,
  StoreError,
} from '#actions/store.ts'
import type { VetLinks } from '#actions/vet/vet-links.ts'
import { hashBytes } from '#core/journal/canonical.ts'
import type { Entry, Envelope, StoredEntry } from '#core/journal/entry.ts'
import { acceptInTurn, takeTurn } from './accepting.ts'
import { AccountsStore } from './accounts-store.ts'
import { eraseAsOrdered, isErased } from './erasing.ts'
import { entryIn, JournalReader } from './journal-reader.ts'
import { writeListTextsOf } from './list-texts.ts'
import { type MigrationDialect, migrate } from './migrate.ts'
import { OwnerLinksStore } from './owner-links-store.ts'
import { projectAll, projectNext, projectTouched } from './projecting.ts'
import { remakingIn, wantRemaking } from './remaking.ts'
import { registerRowOf, restoreInTurn } from './restoring.ts'
import type { Tables } from './tables.ts'
import { VetLinksStore } from './vet-links-store.ts'

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

/** The journal, and beside it in the same database the accounts and the links for owners. */
export type OpenStore = Store & {
  readonly accounts: Accounts
  readonly ownerLinks: OwnerLinks
  readonly vetLinks: VetLinks
}

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
class JournalStore extends JournalReader implements OpenStore {
  readonly accounts: Accounts
  readonly ownerLinks: OwnerLinks
  readonly vetLinks: VetLinks
  readonly #dialect: StoreDialect
  readonly #db: Kysely<Tables>
  readonly #project: Projector

  constructor(dialect: StoreDialect, project: Projector) {
    super(dialect.db, dialect.explain)
    this.#dialect = dialect
    this.#db = dialect.db
    this.#project = project
    this.accounts = new AccountsStore(dialect)
    this.ownerLinks = new OwnerLinksStore(dialect)
    this.vetLinks = new VetLinksStore(dialect)
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
      if (row.register === 'clinic' || row.register === 'closed-day') await wantRemaking(tx, clinic)
      return next
    })
    if (row.body === null) await this.#dialect.forgetErased()
    return written
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

  rebuild(clinic: string): Promise<number> {
    return this.#change(clinic, async (tx, touch) => {
      await takeTurn(tx, clinic)
      touch(['clinic'])
      return projectAll(tx, clinic, this.#project)
    })
  }

  async remakeNext(clinic: string): Promise<Remaking | null> {
    if ((await this.remaking(clinic)) === null) return null
    const after = await this.#change(clinic, async (tx, touch) => {
      await takeTurn(tx, clinic)
      const made = await projectNext(tx, clinic, this.#project)
      const now = await remakingIn(tx, clinic)
      if (isTold(made.length, now)) touch([remadeLists])
      return now
    })
    // What an old row said of an entry of the house that was erased meanwhile goes with it.
    if (after === null) await this.#dialect.forgetErased()
    return after
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

  async #write<Result>(writing: (tx: Transaction<Tables>) => Promise<Result>): Promise<Result> {
    this.#dialect.beforeWrite()
    try {
      return await this.#db.transaction().setIsolationLevel('read committed').execute(writing)
    } catch (error) {
      throw this.#dialect.explain(error) ?? error
    }
  }
}

/** Whoever watches hears of lists made again about twenty times on the way and at its end, however many there are. */
function isTold(made: number, now: Remaking | null): boolean {
  if (now === null) return true
  const step = (cases: number) => Math.floor((20 * cases) / now.of)
  return step(now.made - made) !== step(now.made)
}

async function positionIn(db: Kysely<Tables>, clinic: string): Promise<number> {
  const query = db.selectFrom('clinics').select('position').where('clinic', '=', clinic)
  return (await query.executeTakeFirst())?.position ?? 0
}
