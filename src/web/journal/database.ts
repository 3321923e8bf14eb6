import { type DBSchema, type IDBPDatabase, openDB } from 'idb'
import type { CaseRow, OwedRow, RegisterRow, Remaking } from '#actions/store.ts'
import type { Entry, StoredEntry } from '#core/journal/entry.ts'
import type { ContactRow } from '#core/journal/registers.ts'

/** An entry of this device that the server has not acknowledged yet. */
export type Waiting = {
  readonly entry: Entry
  /** `waiting`: will be sent by itself. `sign-in`: after signing in. `refused`: a person must look at it. */
  readonly state: 'waiting' | 'sign-in' | 'refused'
  readonly because: string | null
}

/** A row of a register written here, a new owner say, that the server does not have yet. */
export type WaitingRow = {
  readonly register: 'contact'
  readonly id: string
  readonly body: ContactRow
  /** The revision that this one was written upon, null for a new row; left out, it is written whatever stands there. */
  readonly after?: number | null
  /** Who wrote it. */
  readonly by: string
  readonly state: Waiting['state']
  readonly because: string | null
}

/** One case as this device last had it from the server, with the clinic around it. */
export type KeptCase = {
  readonly clinic: string
  readonly stream: string
  readonly entries: readonly StoredEntry[]
  readonly house: readonly StoredEntry[]
  readonly rows: readonly RegisterRow[]
  readonly keptAside: readonly { readonly id: string; readonly receivedAt: string; readonly text: string }[]
  readonly asOf: string
}

/** The holding tray as this device last had it. */
export type KeptTray = { readonly asOf: string; readonly entries: readonly StoredEntry[] }

/** The lists of the clinic as this device last had them. */
export type Lists = {
  readonly asOf: string
  /** Grows with every change of the lists; the server is asked for what came after it. */
  readonly version: number
  /** While the server makes lists again after a change of the house; missing in what an older app kept here. */
  readonly remaking?: Remaking | null
  readonly owed: readonly (OwedRow & { readonly name: string; readonly species: string })[]
  readonly cases: readonly (CaseRow & {
    readonly ownerName: string | null
    readonly ownerPhone: string | null
    readonly householdId: string | null
  })[]
}

interface Kept extends DBSchema {
  outbox: { key: string; value: Waiting & { readonly order: number } }
  cases: { key: string; value: KeptCase }
  drafts: { key: string; value: { readonly draft: unknown; readonly at: string; readonly person: string } }
  files: { key: string; value: { readonly bytes: Blob; readonly mediaType: string } }
  keep: { key: string; value: unknown }
  rows: { key: string; value: WaitingRow }
}

let opened: Promise<IDBPDatabase<Kept>> | undefined

/** What this device keeps: unsent entries, drafts, and copies of what it has read. Opened once. */
export function database(): Promise<IDBPDatabase<Kept>> {
  opened ??= openDB<Kept>('quiet-ear', 2, {
    upgrade(db, before) {
      if (before < 1)
        for (const name of ['outbox', 'cases', 'drafts', 'files', 'keep'] as const) db.createObjectStore(name)
      if (before < 2) db.createObjectStore('rows')
    },
    // A newer version of the app waits in another page until this one lets go: drafts are on the disk by then.
    blocking(_, __, event) {
      const held = event.target as IDBDatabase
      held.close()
      location.reload()
    },
    terminated: forgetOpened,
  })
  opened.catch(forgetOpened)
  return opened
}

function forgetOpened(): void {
  opened = undefined
}

/** Small things by name: who is signed in here, the lists, the device's own id. */
export async function keep<Value>(name: string): Promise<Value | undefined> {
  return (await (await database()).get('keep', name)) as Value | undefined
}

export async function putKept(name: string, value: unknown): Promise<void> {
  await (await database()).put('keep', value, name)
}

/** Forgets what was read from the clinic. Unsent entries, their files and drafts stay: they exist nowhere else. */
export async function forgetReadings(): Promise<void> {
  const db = await database()
  await db.clear('cases')
  await db.clear('keep')
}
