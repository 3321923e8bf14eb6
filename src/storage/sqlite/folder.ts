import { closeSync, fsyncSync, mkdirSync, openSync, statfsSync } from 'node:fs'
import { dirname } from 'node:path'
import { StoreError } from '#actions/store.ts'

/** Makes a folder only its owner can read, and puts its name on disk. */
export function makeFolder(folder: string): void {
  const made = mkdirSync(folder, { recursive: true, mode: 0o700 })
  if (made !== undefined) syncFolder(dirname(made))
}

/** Puts the names in a folder on disk: needed once after a file in it was made. */
export function syncFolder(folder: string): void {
  // Windows has no such call for folders; its file systems order the name themselves.
  if (process.platform === 'win32') return
  const handle = openSync(folder, 'r')
  try {
    fsyncSync(handle)
  } finally {
    closeSync(handle)
  }
}

/** Stops a write early, with a sentence: a full disk must never meet a half-written page. */
export function refuseWhenNearlyFull(folder: string, leaveFreeBytes: number): void {
  const { bavail, bsize } = statfsSync(folder)
  const free = bavail * bsize
  if (free >= leaveFreeBytes) return
  throw new StoreError(
    'full',
    `Nothing was written: the disk of ${folder} has ${mebibytes(free)} MiB free and ${mebibytes(leaveFreeBytes)} MiB must stay free. Make room and send again; everything accepted so far is safe.`,
  )
}

function mebibytes(bytes: number): string {
  return (bytes / 1024 / 1024).toFixed(1)
}
