import { dirname, join, resolve } from 'node:path'
import { Kysely } from 'kysely'
import Database from 'libsql'
import { type Projector, StoreError } from '#actions/store.ts'
import { Listeners } from '../changes.ts'
import { type OpenStore, openJournal, type StoreDialect } from '../journal-store.ts'
import type { Tables } from '../tables.ts'
import { ImmediateSqliteDialect } from './driver.ts'
import { makeFolder, refuseWhenNearlyFull, syncFolder } from './folder.ts'
import { lockFolder } from './folder-lock.ts'

export const dataFileName = 'quiet-ear.db'

export type SqliteOptions = {
  readonly project: Projector
  /** Writes stop while the disk has less than this left; a full disk must never meet a half-written page. */
  readonly leaveFreeBytes?: number
}

const leaveFree = 64 * 1024 * 1024

/** Opens the data folder for this process alone: one server per folder, refused with a sentence otherwise. */
export async function openLockedFolder(folder: string, options: SqliteOptions): Promise<OpenStore> {
  makeFolder(folder)
  const lock = await lockFolder(folder)
  try {
    return await open(join(folder, dataFileName), options, lock.release)
  } catch (error) {
    await lock.release()
    throw error
  }
}

async function open(file: string, options: SqliteOptions, release: () => Promise<void>): Promise<OpenStore> {
  const path = resolve(file)
  makeFolder(dirname(path))
  const database = openDatabase(path)
  // The file's name lives in its folder, which goes to disk at every start: the start that made the file may have been cut.
  syncFolder(dirname(path))
  return openJournal(dialectOf(database, path, options.leaveFreeBytes ?? leaveFree, release), options.project)
}

function openDatabase(path: string): Database.Database {
  try {
    const database = new Database(path)
    // Asked with all(): get() adds a field of its own to the row.
    for (const pragma of pragmas) database.prepare(`PRAGMA ${pragma}`).all()
    return database
  } catch (error) {
    throw explain(error, path) ?? error
  }
}

/** FULL: a commit is on disk before it is acknowledged. secure_delete: an erased body is overwritten, not only unlinked. */
const pragmas = [
  'busy_timeout = 5000',
  'journal_mode = WAL',
  'synchronous = FULL',
  'foreign_keys = ON',
  'secure_delete = ON',
]

function dialectOf(
  database: Database.Database,
  path: string,
  leaveFreeBytes: number,
  release: () => Promise<void>,
): StoreDialect {
  const db = new Kysely<Tables>({ dialect: new ImmediateSqliteDialect(database) })
  // In its turn on the only connection, so that no transaction is open while the log is folded into the file.
  const checkpoint = () =>
    db.connection().execute(async () => {
      database.prepare('PRAGMA wal_checkpoint(TRUNCATE)').all()
    })
  const listeners = new Listeners()
  return {
    db,
    where: path,
    bytes: 'blob',
    lockMigrations: async () => undefined,
    beforeWrite: () => refuseWhenNearlyFull(dirname(path), leaveFreeBytes),
    explain: (error) => explain(error, path),
    forgetErased: checkpoint,
    // No other process writes in this folder, so whoever listens is in this one.
    announce: async () => undefined,
    committed: (change) => listeners.changed(change),
    watch: async (listener) => listeners.add(listener),
    close: async () => {
      try {
        await checkpoint()
      } finally {
        await db.destroy()
        await release()
      }
    },
  }
}

function explain(error: unknown, path: string): StoreError | undefined {
  if (error instanceof StoreError || !(error instanceof Error)) return undefined
  const code = 'code' in error && typeof error.code === 'string' ? error.code : ''
  const tell = (kind: StoreError['code'], sentence: string) => new StoreError(kind, sentence, error)
  if (code.startsWith('SQLITE_FULL') || code === 'ENOSPC') {
    return tell(
      'full',
      `Nothing was written: the disk of ${path} is full. Make room; everything accepted so far is safe.`,
    )
  }
  if (code.startsWith('SQLITE_NOTADB')) return tell('broken', `${path} is not a data file of Quiet Ear.`)
  if (code.startsWith('SQLITE_CORRUPT')) {
    return tell('broken', `${path} is damaged: stop, keep the file, and restore the last backup into a new folder.`)
  }
  if (/^SQLITE_(IOERR|CANTOPEN|READONLY|BUSY|LOCKED|PERM)/.test(code)) {
    return tell('failed', `${path} cannot be read or written (${code}): check the disk and the folder's permissions.`)
  }
  return undefined
}
