import { existsSync, mkdirSync, renameSync, rmSync, statSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'libsql'
import { StoreError } from '#actions/store.ts'
import { makeFolder, syncFolder } from '../sqlite/folder.ts'
import { dataFileName } from '../sqlite/open.ts'
import { aboutName, type BackupAbout, sumOf } from './backup-file.ts'
import { copyDatabase } from './copy-database.ts'
import { type Erasure, eraseListName, erasuresIn, readErasures, textOf, together } from './erase-list.ts'
import { syncedWrite, syncFile } from './synced-write.ts'

export type BackupMade = { readonly folder: string; readonly about: BackupAbout }

export type BackupOptions = {
  /** The data folder. A server may be running on it. */
  readonly data: string
  /** Where the backups stand, each in a folder of its own, and the erase list beside them. */
  readonly into: string
  /** UTC with milliseconds. */
  readonly at: string
  readonly version: string
}

/**
 * Copies everything the data folder holds (entries, registers, files, accounts) as it stood at one moment, while
 * others go on writing. The folder appears under its name only when all of it is on disk.
 */
export async function backUp({ data, into, at, version }: BackupOptions): Promise<BackupMade> {
  makeFolder(into)
  const folder = join(into, `quiet-ear-${at.replace(/\.\d+Z$/, 'Z').replaceAll(':', '-')}`)
  if (existsSync(folder)) throw new StoreError('not-empty', `There is a backup of this second already: ${folder}.`)
  const part = `${folder}.part`
  rmSync(part, { recursive: true, force: true })
  mkdirSync(part, { mode: 0o700 })
  try {
    const copy = join(part, dataFileName)
    await copyDatabase(join(data, dataFileName), copy)
    const { clinics, erasures } = holdings(copy)
    const about: BackupAbout = {
      format: 1,
      at,
      version,
      bytes: statSync(copy).size,
      sha256: await sumOf(copy),
      clinics,
    }
    syncFile(copy)
    syncedWrite(join(part, aboutName), `${JSON.stringify(about, null, 2)}\n`)
    keepErasures(into, erasures)
    syncFolder(part)
    renameSync(part, folder)
    syncFolder(into)
    return { folder, about }
  } catch (error) {
    rmSync(part, { recursive: true, force: true })
    throw explained(error, into)
  }
}

/** What the copy holds, read from the copy itself. */
function holdings(copy: string): { clinics: BackupAbout['clinics']; erasures: Erasure[] } {
  const database = new Database(copy)
  try {
    const clinics = database
      .prepare(
        'select clinic, (select count(*) from entries where entries.clinic = clinics.clinic) as entries from clinics order by clinic',
      )
      .all() as { clinic: string; entries: number }[]
    return {
      clinics: clinics.map(({ clinic, entries }) => ({ clinic, entries })),
      erasures: erasuresIn(database),
    }
  } finally {
    database.close()
  }
}

/** The list only grows: what an earlier backup knew to be erased stays on it. */
function keepErasures(into: string, erasures: readonly Erasure[]): void {
  const path = join(into, eraseListName)
  const all = together(readErasures(path), erasures)
  syncedWrite(`${path}.part`, all.map((one) => `${textOf(one)}\n`).join(''))
  renameSync(`${path}.part`, path)
}

function explained(error: unknown, into: string): unknown {
  const code = (error as { code?: string }).code ?? ''
  if (code === 'ENOSPC' || code.startsWith('SQLITE_FULL')) {
    return new StoreError('full', `No backup was made: the disk of ${into} is full. Make room and try again.`, error)
  }
  return error
}
