import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Store } from '#actions/store.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { skipPostgres, startPostgres } from '#storage/postgres/for-tests.ts'
import { openPostgres } from '#storage/postgres/open.ts'
import { projectForTests } from '#storage/projector-for-tests.ts'
import { openLockedFolder } from '#storage/sqlite/open.ts'

export type StorageFigures = {
  /** Durable entries per second, four writers, one entry in each delivery. */
  readonly oneAtATime: number
  /** Durable entries per second, four writers, twenty entries in each delivery. */
  readonly batchesOfTwenty: number
}

const writers = 4
const entriesOfACase = 60

/** Every figure includes the fold and the projection of the case, which grows to sixty entries before the next begins. */
export async function storageFigures(open: () => Promise<Store>, milliseconds = 2_000): Promise<StorageFigures> {
  const store = await open()
  try {
    await perSecond(store, 1, 300)
    return {
      oneAtATime: await perSecond(store, 1, milliseconds),
      batchesOfTwenty: await perSecond(store, 20, milliseconds),
    }
  } finally {
    await store.close()
  }
}

let run = 0

async function perSecond(store: Store, batch: number, milliseconds: number): Promise<number> {
  run += 1
  const began = performance.now()
  const counts = await Promise.all(
    Array.from({ length: writers }, async (_, writer) => {
      const make = entryMaker({}, run * writers + writer)
      let written = 0
      while (performance.now() - began < milliseconds) {
        const stream = `case:${run}-${writer}-${Math.floor(written / entriesOfACase)}`
        const entries = Array.from({ length: batch }, () => make({ stream }))
        await store.accept('clinic-1', entries, '2026-03-02T09:00:00.000Z')
        written += batch
      }
      return written
    }),
  )
  const seconds = (performance.now() - began) / 1_000
  return Math.round(counts.reduce((sum, count) => sum + count, 0) / seconds)
}

export async function benchSqlite(): Promise<StorageFigures> {
  const folder = mkdtempSync(join(tmpdir(), 'quiet-ear-'))
  try {
    return await storageFigures(() => openLockedFolder(folder, { project: projectForTests }))
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

/** Undefined when PostgreSQL was left out on purpose. */
export async function benchPostgres(): Promise<StorageFigures | undefined> {
  if (skipPostgres) return undefined
  const server = await startPostgres()
  try {
    const address = await server.newDatabase()
    return await storageFigures(() => openPostgres(address, { project: projectForTests, connections: writers }))
  } finally {
    await server.stop()
  }
}
