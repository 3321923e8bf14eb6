import pg from 'pg'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Change } from '#actions/store.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { projectForTests } from '../projector-for-tests.ts'
import { type PostgresForTests, skipPostgres, startPostgres } from './for-tests.ts'
import { openPostgres } from './open.ts'

/** A busy machine is no fault of the code. */
const patient = { timeout: 30_000 }
const at = '2026-03-02T09:00:00.000Z'

describe.skipIf(skipPostgres)('the line on which the database tells of changes', () => {
  let server: PostgresForTests
  beforeAll(async () => {
    server = await startPostgres()
  })
  afterAll(() => server?.stop())

  it('is made anew when it breaks, and whoever listens learns that something was missed', async () => {
    const address = await server.newDatabase()
    const [writer, reader] = await Promise.all([1, 2].map(() => openPostgres(address, { project: projectForTests })))
    if (!writer || !reader) throw new Error('Two processes would be needed.')
    const heard: Change[] = []
    let missed = 0
    await reader.watch({
      changed: (change) => heard.push(change),
      missed: () => {
        missed += 1
      },
    })
    const make = entryMaker()
    await writer.accept('clinic-1', [make()], at)
    await expect.poll(() => heard.length, patient).toBe(1)

    const admin = new pg.Client({ connectionString: address })
    await admin.connect()
    const { rowCount } = await admin.query(
      `select pg_terminate_backend(pid) from pg_stat_activity where query like 'listen %' and pid <> pg_backend_pid()`,
    )
    await admin.end()
    expect(rowCount).toBe(1)
    // Written while nobody listens: not heard as a change, but as something that was missed.
    await writer.accept('clinic-1', [make()], at)
    await expect.poll(() => missed, patient).toBe(1)
    await writer.accept('clinic-1', [make()], at)
    await expect.poll(() => heard.at(-1)?.position, patient).toBe(3)
    await Promise.all([writer.close(), reader.close()])
  })
})
