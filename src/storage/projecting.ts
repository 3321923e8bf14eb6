import type { Kysely, Transaction } from 'kysely'
import { unprojected } from '#actions/journal/unprojected.ts'
import {
  type KeptAside,
  type OwedRow,
  type Projected,
  type Projection,
  type Projector,
  type RegisterName,
  type RegisterRow,
  StoreError,
} from '#actions/store.ts'
import { compareText } from '#core/journal/compare-text.ts'
import type { StoredEntry } from '#core/journal/entry.ts'
import { fold } from '#core/journal/fold.ts'
import { inPieces, storedOf } from './entry-rows.ts'
import { writeListTexts } from './list-texts.ts'
import { markMade, nextBehind, wantRemaking } from './remaking.ts'
import type { Tables } from './tables.ts'

type Tx = Transaction<Tables>

/** What a write did: everything behind a position is new, and of some streams a body was erased. */
export type News = { readonly before: number; readonly erased: ReadonlySet<string> }

/**
 * Writes anew what the touched streams project to, and the streams that a live merge joins to them (or joined until
 * now). When something changed in the clinic's own stream that the lists read, every other stream is behind from here on.
 */
export async function projectTouched(
  tx: Tx,
  clinic: string,
  touched: ReadonlySet<string>,
  news: News,
  project: Projector,
): Promise<void> {
  const reader = new StreamReader(tx, clinic)
  const before = await joined(tx, clinic, touched)
  for (const stream of touched) await relink(reader, stream)
  const after = await joined(tx, clinic, touched)
  const everything = touched.has('clinic') && (await changesEverything(reader, news, project))
  if (everything) await wantRemaking(tx, clinic)
  const streams = new Set([...before, ...after])
  if (await readsAnew(tx, clinic, news, project)) streams.add('clinic')
  for (const stream of streams) await projectOne(reader, stream, project)
  await writeListTexts(tx, clinic, [...streams])
  await markMade(tx, clinic, [...streams])
}

/** So many are made again in one transaction at most; and fewer, where they take longer than this many milliseconds. */
const batch = { streams: 20, milliseconds: 50 }

/**
 * Makes the next few lists that are behind. Called in the clinic's turn: what is read is newer than whatever anybody
 * wrote before, and nobody writes until it is on disk.
 */
export async function projectNext(tx: Tx, clinic: string, project: Projector): Promise<string[]> {
  const reader = new StreamReader(tx, clinic)
  const made: string[] = []
  const began = performance.now()
  for (const stream of await nextBehind(tx, clinic, batch.streams)) {
    await projectOne(reader, stream, project)
    reader.forgetCases()
    made.push(stream)
    if (performance.now() - began > batch.milliseconds) break
  }
  await writeListTexts(tx, clinic, made)
  await markMade(tx, clinic, made)
  return made
}

/** Whether what is new in the clinic's own stream is something the lists of other streams read. When in doubt, it is. */
async function changesEverything(reader: StreamReader, news: News, { readOfClinic }: Projector): Promise<boolean> {
  if (!readOfClinic || news.erased.has('clinic')) return true
  const entries = await orDamage(reader.stream('clinic'))
  if (entries instanceof StoreError) return true
  const old = entries.filter(({ envelope }) => envelope.position <= news.before)
  try {
    return readOfClinic(entries) !== readOfClinic(old)
  } catch {
    return true
  }
}

/** Whether something came, or was erased, that the clinic's own rows are made from wherever it stands. */
async function readsAnew(tx: Tx, clinic: string, { before, erased }: News, { readEverywhere }: Projector) {
  if (!readEverywhere) return false
  if (erased.size > 0) return true
  const came = await tx
    .selectFrom('entries')
    .select('id')
    .where('clinic', '=', clinic)
    .where('kind', 'in', readEverywhere)
    .where('position', '>', before)
    .limit(1)
    .execute()
  return came.length > 0
}

/** Writes every projection of the clinic anew. Returns how many streams were read. */
export async function projectAll(tx: Tx, clinic: string, project: Projector): Promise<number> {
  await tx.deleteFrom('links').where('clinic', '=', clinic).execute()
  await dropStrayRows(tx, clinic)
  const merging = await tx
    .selectFrom('entries')
    .select('stream')
    .distinct()
    .where('clinic', '=', clinic)
    .where('kind', '=', 'merge')
    .execute()
  for (const { stream } of merging) {
    await relink(new StreamReader(tx, clinic), stream)
  }
  // What the clinic's own rows are made from may be there before its first own entry.
  const begun = await streamsOf(tx, clinic)
  const streams = new Set([...begun, ...(project.readEverywhere ? ['clinic'] : [])])
  const reader = new StreamReader(tx, clinic)
  for (const stream of streams) {
    await projectOne(reader, stream, project)
    reader.forgetCases()
  }
  await writeListTexts(tx, clinic, [...streams])
  await markMade(tx, clinic, [...streams])
  return begun.length
}

/** Rows of no stream go; those of a stream go when it is written anew, so that one that fails keeps what it had. */
async function dropStrayRows(tx: Tx, clinic: string): Promise<void> {
  for (const table of ['owed', 'cases'] as const) {
    const streams = tx.selectFrom('entries').select('stream').where('clinic', '=', clinic).where('sequence', '=', 1)
    await tx.deleteFrom(table).where('clinic', '=', clinic).where('stream', 'not in', streams).execute()
  }
}

async function streamsOf(tx: Tx, clinic: string): Promise<string[]> {
  const rows = await tx
    .selectFrom('entries')
    .select('stream')
    .where('clinic', '=', clinic)
    .where('sequence', '=', 1)
    .orderBy('position')
    .execute()
  return rows.map(({ stream }) => stream)
}

/** Reads each stream once. */
class StreamReader {
  readonly tx: Tx
  readonly clinic: string
  readonly #read = new Map<string, StoredEntry[]>()
  #rows: RegisterRow[] | undefined

  constructor(tx: Tx, clinic: string) {
    this.tx = tx
    this.clinic = clinic
  }

  async stream(stream: string): Promise<StoredEntry[]> {
    const known = this.#read.get(stream)
    if (known) return known
    const rows = await this.tx
      .selectFrom('entries')
      .selectAll()
      .where('clinic', '=', this.clinic)
      .where('stream', '=', stream)
      .orderBy('sequence')
      .execute()
    const entries = rows.map(storedOf)
    this.#read.set(stream, entries)
    return entries
  }

  async lastReceived(stream: string): Promise<string> {
    const last = await this.tx
      .selectFrom('entries')
      .select('received_at')
      .where('clinic', '=', this.clinic)
      .where('stream', '=', stream)
      .orderBy('sequence', 'desc')
      .limit(1)
      .executeTakeFirst()
    return last?.received_at ?? ''
  }

  /** The entries of some kinds in every stream; none as long as there is none of the first kind. */
  async ofKinds([first, ...more]: readonly [string, ...string[]]): Promise<StoredEntry[]> {
    const of = (kinds: readonly string[]) =>
      this.tx.selectFrom('entries').where('clinic', '=', this.clinic).where('kind', 'in', kinds)
    const begun = await of([first]).select('id').limit(1).execute()
    if (begun.length === 0) return []
    const rows = await of([first, ...more])
      .selectAll()
      .orderBy('position')
      .execute()
    return rows.map(storedOf)
  }

  /** The registers that lists depend on, read once. */
  async rows(): Promise<RegisterRow[]> {
    this.#rows ??= await registersIn(this.tx, this.clinic, { without: 'contact' })
    return this.#rows
  }

  forgetCases(): void {
    for (const stream of this.#read.keys()) if (stream !== 'clinic') this.#read.delete(stream)
  }
}

/** The live merges of a stream, as they stand after its newest entry. */
async function relink(reader: StreamReader, stream: string): Promise<void> {
  const { tx, clinic } = reader
  const entries = await orDamage(reader.stream(stream))
  // Of a stream that cannot be read the links stay as they were; its projection says what is wrong.
  if (entries instanceof StoreError) return
  if (!entries.some(({ header }) => header.kind === 'merge')) return
  const others = new Set(
    fold(entries)
      .live('merge')
      .map(({ body }) => body.otherStream)
      // A journal from elsewhere may hold anything; a stream never has a longer name.
      .filter((other) => typeof other === 'string' && other.length <= 200),
  )
  others.delete(stream)
  await tx.deleteFrom('links').where('clinic', '=', clinic).where('stream', '=', stream).execute()
  if (others.size === 0) return
  await tx
    .insertInto('links')
    .values([...others].map((other) => ({ clinic, stream, other })))
    .execute()
}

/** What was kept aside under the ids of entries of some streams, oldest first. */
export async function keptAsideOf(
  db: Kysely<Tables>,
  clinic: string,
  streams: readonly string[],
): Promise<KeptAside[]> {
  const rows = await db
    .selectFrom('kept_aside')
    .innerJoin('entries', (join) =>
      join.onRef('entries.id', '=', 'kept_aside.id').onRef('entries.clinic', '=', 'kept_aside.clinic'),
    )
    .select(['kept_aside.id', 'kept_aside.received_at', 'kept_aside.text'])
    .where('kept_aside.clinic', '=', clinic)
    .where('entries.stream', 'in', streams)
    .orderBy('kept_aside.received_at')
    .orderBy('kept_aside.id')
    .orderBy('kept_aside.hash')
    .execute()
  return rows.map(({ id, received_at, text }) => ({ id, receivedAt: received_at, text }))
}

/** Every revision of every register of the clinic, perhaps without one of them, in one fixed order. */
export async function registersIn(
  db: Kysely<Tables>,
  clinic: string,
  { without }: { readonly without?: RegisterName } = {},
): Promise<RegisterRow[]> {
  const all = db.selectFrom('register_rows').selectAll().where('clinic', '=', clinic)
  const rows = await (without === undefined ? all : all.where('register', '<>', without)).orderBy('revision').execute()
  const key = (row: RegisterRow) => `${row.register} ${row.id}`
  return rows
    .map(({ register, id, revision, body, written_by, written_at }): RegisterRow => {
      return { register, id, revision, body: body === null ? null : JSON.parse(body), by: written_by, at: written_at }
    })
    .sort((a, b) => compareText(key(a), key(b)))
}

/** The given streams and all that live merges join to them, in either direction and over any number of steps. */
export async function joined(db: Kysely<Tables>, clinic: string, from: Iterable<string>): Promise<Set<string>> {
  const all = new Set(from)
  let front = [...all]
  while (front.length > 0) {
    const found: string[] = []
    for (const some of inPieces(front)) {
      const rows = await db
        .selectFrom('links')
        .select(['stream', 'other'])
        .where('clinic', '=', clinic)
        .where((is) => is.or([is('stream', 'in', some), is('other', 'in', some)]))
        .execute()
      found.push(...rows.flatMap(({ stream, other }) => [stream, other]))
    }
    front = [...new Set(found)].filter((stream) => !all.has(stream))
    for (const stream of front) all.add(stream)
  }
  return all
}

async function projectOne(reader: StreamReader, stream: string, project: Projector): Promise<void> {
  const { tx, clinic } = reader
  const about = await orDamage(aboutOf(reader, stream, project))
  const projection = about instanceof StoreError ? about : projectionOf(about, project)
  if (!(projection instanceof Error)) return write(reader, stream, projection)
  await keepOldRows(tx, clinic, unprojected(stream, await reader.lastReceived(stream), projection))
}

async function aboutOf(reader: StreamReader, stream: string, { readEverywhere }: Projector): Promise<Projected> {
  const { tx, clinic } = reader
  const entries = await reader.stream(stream)
  const linked: StoredEntry[] = []
  for (const other of await joined(tx, clinic, [stream])) {
    if (other !== stream) linked.push(...(await reader.stream(other)))
  }
  linked.sort((a, b) => a.envelope.position - b.envelope.position)
  const clinicEntries = await reader.stream('clinic')
  const everywhere = stream === 'clinic' && readEverywhere ? await reader.ofKinds(readEverywhere) : []
  const keptAside = await keptAsideOf(tx, clinic, [stream])
  const rows = await reader.rows()
  return { clinic, stream, entries, clinicEntries, linked, everywhere, keptAside, rows }
}

/** One damaged entry must not keep the next one out: the damage is told, anything else is thrown on. */
async function orDamage<Result>(reading: Promise<Result>): Promise<Result | StoreError> {
  try {
    return await reading
  } catch (error) {
    if (error instanceof StoreError && error.code === 'broken') return error
    throw error
  }
}

/**
 * What was done can always be recorded: a projector that fails, or makes rows that cannot be written, never refuses an
 * entry. The rows of before stay, with one more that says so.
 */
function projectionOf(about: Projected, project: Projector): Projection | Error {
  try {
    const projection = project(about)
    refuseUnwritable(about.stream, projection)
    return projection
  } catch (error) {
    return error instanceof Error ? error : new Error(String(error))
  }
}

/** Longer than any id of ours, and short enough for the key of either database. */
const longestId = 500

/** Whatever the database would refuse is found here, where it costs one stream its lists and not the entry its place. */
function refuseUnwritable(stream: string, { owed, row }: Projection): void {
  const foreign = [...owed, ...(row ? [row] : [])].find((made) => made.stream !== stream)
  if (foreign) throw new Error(`The projection of ${stream} made a row for ${foreign.stream}.`)
  const ids = new Set<string>()
  for (const { id } of owed) {
    if (ids.has(id)) throw new Error(`The projection of ${stream} made two rows ${id.slice(0, longestId)}.`)
    if (id.length > longestId) throw new Error(`The projection of ${stream} made an id of ${id.length} characters.`)
    ids.add(id)
  }
}

async function keepOldRows(tx: Tx, clinic: string, failed: OwedRow): Promise<void> {
  const { stream, id } = failed
  const ofFailed = { clinic, stream, id }
  await tx
    .deleteFrom('owed')
    .where((is) => is.and(ofFailed))
    .execute()
  await insertOwed(tx, clinic, stream, [failed])
}

async function write(
  { tx, clinic }: StreamReader,
  stream: string,
  { owed, row, operated = '[]' }: Projection,
): Promise<void> {
  await tx.deleteFrom('owed').where('clinic', '=', clinic).where('stream', '=', stream).execute()
  await tx.deleteFrom('cases').where('clinic', '=', clinic).where('stream', '=', stream).execute()
  await insertOwed(tx, clinic, stream, owed)
  if (!row) return
  const { animal, name, species, chip, contact, household, chapter, conflicts } = row
  await tx
    .insertInto('cases')
    .values({
      clinic,
      stream,
      conflicts,
      ...readable({ animal, name, species, chip, contact, household, chapter, operated }),
    })
    .execute()
}

async function insertOwed(tx: Tx, clinic: string, stream: string, owed: readonly OwedRow[]): Promise<void> {
  const rows = owed.map(({ id, what, who, dueFrom, dueBy, why, sources }) => {
    return { id, what, who, due_from: dueFrom, due_by: dueBy, why, sources: JSON.stringify(sources) }
  })
  for (const some of inPieces(rows)) {
    await tx
      .insertInto('owed')
      .values(some.map((made) => ({ clinic, stream, ...readable(made) })))
      .execute()
  }
}

/** PostgreSQL's text cannot hold the character zero; the journal keeps it (escaped in its JSON), a list shows it as unreadable. */
function readable<Row extends Readonly<Record<string, string | null>>>(row: Row): Row {
  const shown = Object.entries(row).map(([key, text]) => [key, text?.replaceAll('\u0000', '\uFFFD') ?? null])
  return Object.fromEntries(shown) as Row
}
