import type { Transaction } from 'kysely'
import type { Acceptance, KeptAside } from '#actions/store.ts'
import { closesRing, type EntryRefusal, sameEntry } from '#core/journal/accept.ts'
import { canonical, hashText, type Json } from '#core/journal/canonical.ts'
import { seal } from '#core/journal/chain.ts'
import { bodyHashOf, type Entry, type Envelope, type Header, headerOf } from '#core/journal/entry.ts'
import { asWritten, erasedBy, inPieces, rowOf, type Target, targetsIn } from './entry-rows.ts'
import type { Tables } from './tables.ts'

type Tx = Transaction<Tables>

export type Delivery = {
  readonly clinic: string
  readonly entries: readonly Entry[]
  readonly receivedAt: string
  readonly late: Envelope['late']
}

/** What accepting did: an answer per entry, the streams that grew, and whether a body may have to be erased now. */
export type Accepted = {
  readonly acceptances: Acceptance[]
  readonly streams: ReadonlySet<string>
  readonly erasing: boolean
  /** The clinic's last position before this delivery. */
  readonly before: number
}

type Known = { readonly header: Header; readonly bodyHash: string; readonly erased: boolean }
type Head = { readonly sequence: number; readonly hash: string }

/** Takes the clinic's turn: until the transaction ends nobody else gives out its positions. Returns the last position. */
export async function takeTurn(tx: Tx, clinic: string): Promise<number> {
  await tx
    .insertInto('clinics')
    .values({ clinic, position: 0 })
    .onConflict((conflict) => conflict.doNothing())
    .execute()
  // Writing the row, not only reading it, is what locks it, in the same words for both stores.
  const { position } = await tx
    .updateTable('clinics')
    .set((row) => ({ position: row.ref('position') }))
    .where('clinic', '=', clinic)
    .returning('position')
    .executeTakeFirstOrThrow()
  return position
}

/** Keeps a text aside under the id it came with; the same text is kept once. */
export async function keepAside(tx: Tx, clinic: string, { id, receivedAt, text }: KeptAside): Promise<void> {
  await tx
    .insertInto('kept_aside')
    .values({ clinic, id, hash: hashText(text), received_at: receivedAt, text })
    .onConflict((conflict) => conflict.doNothing())
    .execute()
}

export async function acceptInTurn(tx: Tx, delivery: Delivery): Promise<Accepted> {
  const desk = await Desk.open(tx, delivery)
  const acceptances: Acceptance[] = []
  for (const entry of delivery.entries) acceptances.push(await desk.take(asWritten(entry)))
  await desk.write()
  return { acceptances, streams: desk.streams, erasing: desk.erasing, before: desk.before }
}

/** One delivery at the desk: everything it needs is read first, everything it accepted is written at the end. */
class Desk {
  readonly streams = new Set<string>()
  erasing = false
  before = 0
  readonly #tx: Tx
  readonly #delivery: Delivery
  readonly #rows: ReturnType<typeof rowOf>[] = []
  readonly #targets: Target[] = []
  readonly #targetsOf = new Map<string, Target[]>()
  #position = 0
  #known = new Map<string, Known>()
  #heads = new Map<string, Head>()
  /** Ids that some accepted entry already points at, with what it means. */
  #pointedAt = new Map<string, Set<Target['role']>>()

  private constructor(tx: Tx, delivery: Delivery) {
    this.#tx = tx
    this.#delivery = delivery
  }

  static async open(tx: Tx, delivery: Delivery): Promise<Desk> {
    const desk = new Desk(tx, delivery)
    const { clinic, entries } = delivery
    desk.before = await takeTurn(tx, clinic)
    desk.#position = desk.before
    const erased = entries.map((entry) => erasedBy(entry, entry.body)).filter((id) => id !== undefined)
    const aims = entries.flatMap((entry) => targetsIn(entry, null).map(({ target }) => target))
    await desk.#readKnown([...new Set([...entries.map((entry) => entry.id), ...erased, ...aims])])
    await desk.#readHeads([...new Set(entries.map((entry) => entry.stream.normalize('NFC')))])
    return desk
  }

  async #readKnown(ids: readonly string[]): Promise<void> {
    for (const some of inPieces(ids)) {
      const rows = await this.#tx
        .selectFrom('entries')
        .select(['id', 'header', 'body_hash', 'erased_on'])
        .where('clinic', '=', this.#delivery.clinic)
        .where('id', 'in', some)
        .execute()
      for (const row of rows) {
        const header = JSON.parse(row.header) as Header
        this.#known.set(row.id, { header, bodyHash: row.body_hash, erased: row.erased_on !== null })
      }
      const pointing = await this.#tx
        .selectFrom('targets')
        .select(['target', 'role'])
        .where('clinic', '=', this.#delivery.clinic)
        .where('target', 'in', some)
        .execute()
      for (const { target, role } of pointing) this.#point(target, role)
    }
  }

  async #readHeads(streams: readonly string[]): Promise<void> {
    const { clinic } = this.#delivery
    for (const some of inPieces(streams)) {
      const rows = await this.#tx
        .selectFrom('entries as head')
        .select(['head.stream', 'head.sequence', 'head.hash'])
        .where('head.clinic', '=', clinic)
        .where('head.stream', 'in', some)
        .where('head.sequence', '=', (last) =>
          last
            .selectFrom('entries as other')
            .select((row) => row.fn.max('other.sequence').as('sequence'))
            .where('other.clinic', '=', clinic)
            .whereRef('other.stream', '=', 'head.stream'),
        )
        .execute()
      for (const { stream, sequence, hash } of rows) this.#heads.set(stream, { sequence, hash })
    }
  }

  #point(target: string, role: Target['role']): void {
    const roles = this.#pointedAt.get(target)
    if (roles) roles.add(role)
    else this.#pointedAt.set(target, new Set([role]))
  }

  async take(entry: Entry): Promise<Acceptance> {
    const { id } = entry
    if (entry.clinic !== this.#delivery.clinic) throw new Error(`Entry ${id} belongs to clinic ${entry.clinic}.`)
    const known = this.#known.get(id)
    if (known && sameEntry(entry, known)) return { id, outcome: 'already' }
    if (known) {
      await this.#keepAside(entry, known)
      this.streams.add(known.header.stream)
      return { id, outcome: 'kept-aside' }
    }
    const refusal = this.#erasesAnOrder(entry) ?? this.#unmergesFromElsewhere(entry) ?? (await this.#closesRing(entry))
    if (refusal) return { id, outcome: 'refused', refusal }
    return { id, outcome: 'accepted', stored: this.#accept(entry) }
  }

  #accept(entry: Entry) {
    const { receivedAt, late, clinic } = this.#delivery
    const head = this.#heads.get(entry.stream)
    this.#position += 1
    const place = { position: this.#position, sequence: (head?.sequence ?? 0) + 1, previous: head?.hash ?? null }
    const stored = seal(entry, { ...place, receivedAt, late })
    const { header, bodyHash, envelope } = stored
    this.#heads.set(entry.stream, envelope)
    this.#known.set(entry.id, { header, bodyHash, erased: false })
    this.#rows.push(rowOf(clinic, stored))
    const targets = targetsIn(header, entry.body)
    this.#targetsOf.set(entry.id, targets)
    for (const target of targets) {
      this.#targets.push(target)
      this.#point(target.target, target.role)
      if (target.role === 'erases') this.erasing = true
    }
    if (this.#pointedAt.get(entry.id)?.has('erases')) this.erasing = true
    this.streams.add(entry.stream)
    return stored
  }

  /** The same bytes again are kept once; of an entry that was erased no body is kept again. */
  async #keepAside(entry: Entry, known: Known): Promise<void> {
    const header = headerOf(entry)
    const bodyHash = bodyHashOf(entry)
    const text = canonical((known.erased ? { ...header, bodyHash } : entry) as unknown as Json)
    const { clinic, receivedAt } = this.#delivery
    await keepAside(this.#tx, clinic, { id: entry.id, receivedAt, text })
  }

  #erasesAnOrder(entry: Entry): EntryRefusal | undefined {
    const target = erasedBy(entry, entry.body)
    if (target === undefined) return undefined
    if (target !== entry.id && this.#known.get(target)?.header.kind !== 'erasure') return undefined
    return { because: 'wrong-body', path: 'body.entry', message: 'An order to erase cannot itself be erased.' }
  }

  /** Whether two files are one is read where the merge stands; taken back elsewhere it would look undone and not be. */
  #unmergesFromElsewhere(entry: Entry): EntryRefusal | undefined {
    for (const { target } of targetsIn(entry, null)) {
      const header = this.#known.get(target)?.header
      if (header?.kind !== 'merge' || header.stream === entry.stream) continue
      const message = `The merge ${target} is corrected or withdrawn in the file where it stands, ${header.stream}.`
      return { because: 'wrong-stream', path: 'stream', message }
    }
    return undefined
  }

  async #closesRing(entry: Entry): Promise<EntryRefusal | undefined> {
    const aims = targetsIn(entry, null).map(({ target }) => target)
    if (aims.length === 0) return undefined
    // Only an entry that something already points at, or that points at itself, can close a ring.
    const roles = this.#pointedAt.get(entry.id)
    if (!aims.includes(entry.id) && !roles?.has('supersedes') && !roles?.has('withdraws')) return undefined
    const edges = await this.#reachable(aims)
    if (!closesRing(entry, (id) => edges.get(id) ?? [])) return undefined
    const path = entry.withdraws === null ? 'supersedes' : 'withdraws'
    return { because: 'cycle', path, message: 'These entries would correct or withdraw each other in a ring.' }
  }

  /** The arrows of every entry that can be reached from the given ones, from the store and from this delivery. */
  async #reachable(from: readonly string[]): Promise<ReadonlyMap<string, readonly string[]>> {
    const edges = new Map<string, string[]>()
    let front = [...new Set(from)]
    while (front.length > 0) {
      const found: Target[] = front.flatMap((id) => this.#targetsOf.get(id) ?? [])
      for (const some of inPieces(front)) {
        const rows = await this.#tx
          .selectFrom('targets')
          .select(['entry', 'role', 'target'])
          .where('clinic', '=', this.#delivery.clinic)
          .where('entry', 'in', some)
          .execute()
        found.push(...rows)
      }
      for (const id of front) edges.set(id, [])
      const aims = found.filter(({ role }) => role !== 'erases')
      for (const { entry, target } of aims) edges.get(entry)?.push(target)
      front = [...new Set(aims.map(({ target }) => target))].filter((id) => !edges.has(id))
    }
    return edges
  }

  async write(): Promise<void> {
    if (this.#rows.length === 0) return
    const { clinic } = this.#delivery
    for (const rows of inPieces(this.#rows)) await this.#tx.insertInto('entries').values(rows).execute()
    for (const targets of inPieces(this.#targets)) {
      await this.#tx
        .insertInto('targets')
        .values(targets.map((target) => ({ clinic, ...target })))
        .execute()
    }
    await this.#tx.updateTable('clinics').set({ position: this.#position }).where('clinic', '=', clinic).execute()
  }
}
