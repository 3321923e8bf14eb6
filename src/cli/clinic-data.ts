import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { InputError } from '#actions/input.ts'
import { project } from '#actions/journal/project.ts'
import type { OpenStore } from '#storage/journal-store.ts'
import { openPostgres } from '#storage/postgres/open.ts'
import { dataFileName, openLockedFolder } from '#storage/sqlite/open.ts'

export type Where = {
  readonly data?: string
  readonly clinic?: string
  readonly env: Readonly<Record<string, string | undefined>>
}

/** The data folder of this call: the option, then QUIET_EAR_DATA, then `quiet-ear-data` in the working folder. */
export function dataFolder({ data, env }: Where): string {
  return data ?? env.QUIET_EAR_DATA ?? 'quiet-ear-data'
}

/** Opens the store under the same lock a server takes: while one runs on the folder, this is refused with a sentence. */
export function openStore(where: Where): Promise<OpenStore> {
  const { DATABASE_URL: url } = where.env
  if (url && where.data === undefined) return openPostgres(url, { project })
  return openLockedFolder(dataFolder(where), { project })
}

/** Does something with one clinic of the store and closes the store whatever happens. */
export async function withClinic<Result>(
  where: Where,
  doing: (opened: { readonly store: OpenStore; readonly clinic: string }) => Promise<Result>,
): Promise<Result> {
  return withStore(where, async (store) => doing({ store, clinic: await clinicOf(store, where.clinic) }))
}

/** Does something with a whole store that is there already. */
export async function withStore<Result>(where: Where, doing: (store: OpenStore) => Promise<Result>): Promise<Result> {
  expectDataFile(where)
  const store = await openStore(where)
  try {
    return await doing(store)
  } finally {
    await store.close()
  }
}

/** A mistyped folder is said, and not made. */
function expectDataFile(where: Where): void {
  if (where.env.DATABASE_URL && where.data === undefined) return
  const folder = dataFolder(where)
  if (existsSync(join(folder, dataFileName))) return
  const message = `There is no clinic in the folder ${folder}: name its folder with --data, or import a journal file first.`
  throw new InputError('clinic-missing', 'data', message)
}

async function clinicOf(store: OpenStore, wanted: string | undefined): Promise<string> {
  const clinics = await store.clinics()
  if (wanted !== undefined) {
    if (clinics.includes(wanted)) return wanted
    throw new InputError(
      'unknown-clinic',
      'clinic',
      `There is no clinic "${wanted}" here; there are: ${clinics.join(', ') || 'none'}.`,
    )
  }
  const [only, ...others] = clinics
  if (only !== undefined && others.length === 0) return only
  const message =
    clinics.length === 0
      ? 'There is no clinic here yet: import a journal file first.'
      : `Name one with --clinic: ${clinics.join(', ')}.`
  throw new InputError('clinic-missing', 'clinic', message)
}
