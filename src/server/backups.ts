import { join } from 'node:path'
import type { BackupDone } from '#actions/action.ts'
import { Refused } from '#actions/refused.ts'
import type { Clock } from '#actions/store.ts'
import { backUp } from '#storage/backup/back-up.ts'

export type BackupPlace = {
  /** The data folder; undefined when the data is in a database elsewhere. */
  readonly data: string | undefined
  /** Where backups stand; in the data folder when nothing else is said. */
  readonly into: string | undefined
  readonly version: string
  readonly clock: Clock
}

/** Makes a backup when asked; two people who ask at once get the same one. */
export function backupsOf({ data, into, version, clock }: BackupPlace): () => Promise<BackupDone> {
  let running: Promise<BackupDone> | undefined
  return () => {
    if (data === undefined) throw new Refused(409, 'database-elsewhere', databaseElsewhere)
    running ??= once(data, into ?? join(data, 'backups'), version, clock).finally(() => {
      running = undefined
    })
    return running
  }
}

export const databaseElsewhere =
  'The data of this clinic is in a PostgreSQL database: back it up there, with pg_dump or with what its host offers.'

async function once(data: string, into: string, version: string, clock: Clock): Promise<BackupDone> {
  const { folder, about } = await backUp({ data, into, at: clock.now(), version })
  const entries = about.clinics.reduce((sum, one) => sum + one.entries, 0)
  return { folder, at: about.at, bytes: about.bytes, entries }
}
