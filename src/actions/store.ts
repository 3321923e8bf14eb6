import type { EntryRefusal } from '#core/journal/accept.ts'
import type { Entry, StoredEntry } from '#core/journal/entry.ts'

/** Registers are the ordinary tables with a who/when trail: the clinic, its people, contacts, prices, closed days. */
export const registers = ['clinic', 'person', 'contact', 'price', 'closed-day'] as const
export type RegisterName = (typeof registers)[number]

/** One revision of one row of a register; the highest revision is the current one. `body` is null once erased. */
export type RegisterRow = {
  readonly register: RegisterName
  readonly id: string
  readonly revision: number
  readonly body: Readonly<Record<string, unknown>> | null
  readonly by: string
  readonly at: string
}

export type Acceptance =
  | { readonly id: string; readonly outcome: 'accepted'; readonly stored: StoredEntry }
  | { readonly id: string; readonly outcome: 'already' }
  /** The same id with other bytes: refused and kept aside for a person. */
  | { readonly id: string; readonly outcome: 'kept-aside' }
  | { readonly id: string; readonly outcome: 'refused'; readonly refusal: EntryRefusal }

export type KeptAside = { readonly id: string; readonly receivedAt: string; readonly text: string }

/** One row of what is owed, as the projection keeps it. "Late" is computed when it is read. */
export type OwedRow = {
  readonly stream: string
  readonly id: string
  readonly what: string
  readonly who: string
  readonly dueFrom: string
  readonly dueBy: string
  readonly why: string
  readonly sources: readonly string[]
}

/** One row of the list of cases, for finding an animal. */
export type CaseRow = {
  readonly stream: string
  readonly animal: string
  readonly name: string
  readonly species: string
  readonly chip: string | null
  readonly contact: string | null
  readonly household: string | null
  readonly chapter: string
  readonly conflicts: number
}

/** A row of what is owed as the lists give it, with the animal it is about. */
export type OwedInList = OwedRow & { readonly name: string; readonly species: string }

/** A row of the list of cases as the lists give it, with the owner as the contacts have them now. */
export type CaseInList = Omit<CaseRow, 'household'> & {
  readonly householdId: string | null
  readonly ownerName: string | null
  readonly ownerPhone: string | null
}

/** How many cases have lists as the house now stands, of all; the others still show what they showed before. */
export type Remaking = { readonly made: number; readonly of: number }

/** The lists as JSON, kept ready: a whole clinic's fill megabytes, and every device asks for them. */
export type ListTexts = {
  readonly version: number
  /** While lists are being made again after a change of the house; null when all are as they should be. */
  readonly remaking: Remaking | null
  /** The streams whose rows these are; null: these are all rows there are. */
  readonly changed: readonly string[] | null
  /** `OwedInList` rows in JSON, separated by commas, in no order. */
  readonly owed: string
  /** `CaseInList` rows in JSON, separated by commas, in no order. */
  readonly cases: string
}

export type Projection = {
  readonly owed: readonly OwedRow[]
  readonly row: CaseRow | null
  /** What the case adds to the clinic's own figures, in JSON; kept beside its row, so that a case without a row adds nothing. */
  readonly operated?: string
}

/** All that one stream's projection is made from. */
export type Projected = {
  readonly clinic: string
  readonly stream: string
  readonly entries: readonly StoredEntry[]
  readonly clinicEntries: readonly StoredEntry[]
  /** The entries of the streams that live `merge` entries join to this one, in either direction. */
  readonly linked: readonly StoredEntry[]
  /** Of the clinic's own stream: the entries, wherever they stand, of the kinds its projector reads everywhere. */
  readonly everywhere: readonly StoredEntry[]
  /** What was kept aside under the id of an entry of this stream. */
  readonly keptAside: readonly KeptAside[]
  /** The clinic's registers, every revision; without the contacts, of whom there are thousands and no list depends on them. */
  readonly rows: readonly RegisterRow[]
}

/**
 * Makes a stream's projection from its entries; given to the store so that storage decides nothing clinical.
 * It is called for every stream, also `clinic` and registers. One that throws, or makes rows that cannot be written,
 * never stops an entry: the rows of before stay, and an owed row `unprojected` says so until it succeeds.
 */
export type Projector = ((about: Projected) => Projection) & {
  /**
   * What the lists of cases read of the clinic's own stream, as one text. An entry there that leaves it as it was leaves
   * every other stream's lists alone; any other has all of them made anew (`remakeNext`), which takes a minute in a
   * large clinic; so does every one without this.
   */
  readonly readOfClinic?: (clinicEntries: readonly StoredEntry[]) => string
  /**
   * What the rows of the clinic's own stream are made from in every stream. They are made anew when an entry of these
   * kinds comes, and cost nothing as long as there is none of the first of them.
   */
  readonly readEverywhere?: readonly [string, ...string[]]
}

/**
 * Why the store cannot do what was asked, as one sentence a person can act on. Nothing of the call was kept.
 * `full`: no space; `failed`: disk or database trouble; `newer`: written by a newer program; `in-use`: another server
 * has the folder; `not-empty`: restore needs an empty clinic; `broken`: what was given or read does not verify.
 */
export class StoreError extends Error {
  readonly code: 'full' | 'failed' | 'newer' | 'in-use' | 'not-empty' | 'broken'

  constructor(code: StoreError['code'], sentence: string, cause?: unknown) {
    super(sentence, cause === undefined ? undefined : { cause })
    this.name = 'StoreError'
    this.code = code
  }
}

/** Stands among the streams of a change when lists were made again behind a change of the house. */
export const remadeLists = 'lists'

/** What a write changed, told after it is on disk. A register's rows stand among the streams as `register:contact`. */
export type Change = { readonly clinic: string; readonly position: number; readonly streams: readonly string[] }

export type ChangeListener = {
  readonly changed: (change: Change) => void
  /** The line to a database was lost for a while: anything may have changed meanwhile. */
  readonly missed: () => void
}

/**
 * Where the journal lives. Every key leads with the clinic. `accept` returns only after the entries are on disk.
 * Both stores pass one contract test.
 */
export interface Store {
  /** Accepts entries in the given order, all in one transaction; entry, envelope and projection are written together. */
  accept(
    clinic: string,
    entries: readonly Entry[],
    receivedAt: string,
    late?: 'session-expired' | null,
  ): Promise<Acceptance[]>
  stream(clinic: string, stream: string): Promise<StoredEntry[]>
  /** All entries of the clinic in order of position, in pages, so that a journal of any length can be walked. */
  entries(clinic: string): AsyncIterable<StoredEntry>
  entry(clinic: string, id: string): Promise<StoredEntry | undefined>
  /** The stream itself, and every stream that live merges join to it, in either direction. */
  joined(clinic: string, stream: string): Promise<string[]>
  /** The entries of some streams behind a position, in order of position. */
  after(clinic: string, streams: readonly string[], position: number): Promise<StoredEntry[]>
  /** The position of the newest entry; 0 in an empty clinic. */
  position(clinic: string): Promise<number>
  /** All entries of some kinds in order of position, in whatever stream. */
  ofKinds(clinic: string, kinds: readonly string[]): Promise<StoredEntry[]>
  /** What was kept aside under the ids of entries of some streams. */
  keptAsideOf(clinic: string, streams: readonly string[]): Promise<KeptAside[]>
  keptAside(clinic: string): Promise<KeptAside[]>
  /** Writes entries with the envelopes they already have, into an empty clinic only; refuses a chain that is broken. */
  restore(
    clinic: string,
    entries: AsyncIterable<StoredEntry>,
    rows: readonly RegisterRow[],
    keptAside?: readonly KeptAside[],
  ): Promise<void>
  /** The erase list: every erasure order of the clinic, to be kept apart from backups. */
  erasures(clinic: string): Promise<Entry[]>
  /**
   * Applies an erase list after an older backup was restored: orders that the backup did not have are accepted, then
   * every named body goes; header and body hash stay. Returns the ids erased now.
   */
  applyErasures(clinic: string, orders: readonly Entry[], receivedAt: string): Promise<string[]>
  /** Appends a revision. A row whose body is null is erased in all its revisions; who wrote when stays. */
  putRegister(clinic: string, row: Omit<RegisterRow, 'revision'>): Promise<RegisterRow>
  registers(clinic: string): Promise<RegisterRow[]>
  /** The rows of one register as they now stand, without those that were erased. */
  current(clinic: string, register: RegisterName): Promise<RegisterRow[]>
  /** Keeps a file under its hash; one that only erased entries name is not kept again. */
  putFile(clinic: string, hash: string, mediaType: string, bytes: Uint8Array): Promise<void>
  file(clinic: string, hash: string): Promise<{ readonly mediaType: string; readonly bytes: Uint8Array } | undefined>
  fileHashes(clinic: string): Promise<string[]>
  owed(clinic: string): Promise<OwedRow[]>
  cases(clinic: string): Promise<CaseRow[]>
  /** What every case adds to the clinic's own figures, each in JSON. */
  operated(clinic: string): Promise<string[]>
  /** Both lists, whole, or only the rows of the streams that changed since a version. */
  lists(clinic: string, since: number | null): Promise<ListTexts>
  /**
   * A change of the house that all lists read (a policy, a closed day) only marks them as behind, on disk; this makes the
   * next few of them, in one short transaction in the clinic's turn, and returns how far they are: null when none is
   * behind. Any number of processes may call it: none does what another did, none writes an older answer over a newer.
   */
  remakeNext(clinic: string): Promise<Remaking | null>
  /** How far they are, without making any. */
  remaking(clinic: string): Promise<Remaking | null>
  /** Makes every projection anew from the journal, in one go. Returns how many streams were read. */
  rebuild(clinic: string): Promise<number>
  clinics(): Promise<string[]>
  /** Tells of every change from now on, whichever process made it. Returns how to stop listening. */
  watch(listener: ChangeListener): Promise<() => void>
  close(): Promise<void>
}

/** The time, as an argument: actions never read a clock themselves. */
export interface Clock {
  /** UTC with milliseconds. */
  now(): string
}
