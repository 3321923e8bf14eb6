import { constants, copyFileSync, existsSync, mkdtempSync, renameSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { endedByRestore } from '#actions/people/case-link.ts'
import { type Projector, StoreError } from '#actions/store.ts'
import { ChainWalk } from '#core/journal/chain.ts'
import type { OpenStore } from '../journal-store.ts'
import { makeFolder, syncFolder } from '../sqlite/folder.ts'
import { dataFileName, openLockedFolder } from '../sqlite/open.ts'
import { type BackupAbout, readAbout, sumOf } from './backup-file.ts'
import { type Erasure, eraseAgain } from './erase-list.ts'
import { syncFile } from './synced-write.ts'

export type RestoreOptions = {
  readonly backup: string
  readonly project: Projector
  /** UTC with milliseconds. */
  readonly at: string
}

export type Restored = { readonly about: BackupAbout; readonly erased: readonly string[] }

/**
 * Reads a backup through, as a restore would find it: the sum, every chain, every file. Throws a StoreError that says
 * what is broken. Works on a copy, so that the backup stays as it is.
 */
export async function checkBackup({ backup, project }: Omit<RestoreOptions, 'at'>): Promise<BackupAbout> {
  const scratch = mkdtempSync(join(tmpdir(), 'quiet-ear-check-'))
  try {
    const about = await copied(backup, scratch)
    const store = await openLockedFolder(scratch, { project, leaveFreeBytes: 0 })
    try {
      await readThrough(store, about)
    } finally {
      await store.close()
    }
    return about
  } finally {
    rmSync(scratch, { recursive: true, force: true })
  }
}

/**
 * Puts a backup into a new data folder: everything is checked before the folder takes its name, what was erased since
 * is erased again, the lists are made anew, nobody is signed in any more and no private link opens: a device that was
 * signed out, or a link that was ended, after the backup must not come back with it.
 */
export async function restoreBackup(
  data: string,
  erasures: readonly Erasure[],
  { backup, project, at }: RestoreOptions,
): Promise<Restored> {
  if (existsSync(join(data, dataFileName))) {
    throw new StoreError('not-empty', `The folder ${data} holds a clinic already: restore goes into a new folder only.`)
  }
  makeFolder(data)
  const part = join(data, 'restoring')
  rmSync(part, { recursive: true, force: true })
  makeFolder(part)
  try {
    const about = await copied(backup, part)
    const store = await openLockedFolder(part, { project })
    const erased: string[] = []
    try {
      await readThrough(store, about)
      for (const { clinic } of about.clinics) {
        erased.push(...(await eraseAgain(store, clinic, erasures, at)))
        await store.rebuild(clinic)
        for (const session of await store.accounts.openSessions(clinic, at)) await store.accounts.end(session.id, at)
        const links = await store.ownerLinks.standing(clinic)
        for (const { id } of links) await store.ownerLinks.revoke(clinic, id, endedByRestore, at)
        for (const { id } of await store.vetLinks.standing(clinic, at))
          await store.vetLinks.revoke(clinic, id, endedByRestore, at)
      }
    } finally {
      await store.close()
    }
    renameSync(join(part, dataFileName), join(data, dataFileName))
    syncFolder(data)
    return { about, erased }
  } finally {
    rmSync(part, { recursive: true, force: true })
  }
}

async function copied(backup: string, folder: string): Promise<BackupAbout> {
  const about = readAbout(backup)
  const from = join(backup, dataFileName)
  if (!existsSync(from)) throw new StoreError('broken', `The backup ${backup} has lost its ${dataFileName}.`)
  const to = join(folder, dataFileName)
  copyFileSync(from, to, constants.COPYFILE_FICLONE)
  if ((await sumOf(to)) !== about.sha256) {
    throw new StoreError(
      'broken',
      `The backup ${backup} was changed or cut off after it was made: its sum does not fit.`,
    )
  }
  syncFile(to)
  return about
}

async function readThrough(store: OpenStore, { clinics }: BackupAbout): Promise<void> {
  for (const { clinic, entries } of clinics) {
    const walk = new ChainWalk()
    let count = 0
    for await (const stored of store.entries(clinic)) {
      const found = walk.next(stored)
      if (found) throw broken(clinic, found.entry, found.because)
      count += 1
    }
    const found = walk.finish()
    if (found) throw broken(clinic, found.entry, found.because)
    if (count !== entries)
      throw new StoreError('broken', `Clinic ${clinic} has ${count} entries; the backup says ${entries}.`)
    // A file that was changed is refused when it is read.
    for (const hash of await store.fileHashes(clinic)) await store.file(clinic, hash)
  }
}

function broken(clinic: string, entry: string, because: string): StoreError {
  return new StoreError('broken', `Clinic ${clinic} is broken at entry ${entry} (${because}).`)
}
