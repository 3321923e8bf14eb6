import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Store } from '#actions/store.ts'
import { type PostgresForTests, skipPostgres, startPostgres } from '#storage/postgres/for-tests.ts'
import { openPostgres } from '#storage/postgres/open.ts'
import { projectForTests } from '#storage/projector-for-tests.ts'
import { openLockedFolder } from '#storage/sqlite/open.ts'
import {
  act,
  buildServer,
  endAll,
  makerOf,
  openClinic,
  postEntries,
  ServerProcess,
  type SignedIn,
} from './server-process.ts'

const cases = 600
const until = { timeout: 200_000, interval: 5 }

let server: string
beforeAll(async () => {
  server = await buildServer('lists-after-a-kill')
})
afterAll(endAll)

type Remaking = { readonly made: number; readonly of: number } | null
const remakingAt = async (url: string, who: SignedIn) => (await act(url, 'read-lists', {}, who)).remaking as Remaking
const close = (url: string, day: string, who: SignedIn) =>
  act(url, 'put-row', { register: 'closed-day', id: day, body: { day, because: 'Holiday' } }, who)

async function started(place: string) {
  const running = new ServerProcess(server, [place])
  return { running, url: (await running.url) ?? '' }
}

/** Six hundred cases; the house changes twice, the server is killed on the way, changes again, and is killed again. */
async function killedOnTheWay(place: string, open: () => Promise<Store>): Promise<void> {
  let { running, url } = await started(place)
  const who = await openClinic(url, running.code)
  const make = makerOf(who)
  const entries = Array.from({ length: cases }, (_, at) => make({ stream: `case:${1_000 + at}` }))
  for (let at = 0; at < cases; at += 100) await postEntries(url, entries.slice(at, at + 100), who)
  await expect.poll(() => remakingAt(url, who), until).toBeNull()
  for (const days of [['2026-12-24', '2026-12-25'], ['2026-12-26']]) {
    for (const day of days) await close(url, day, who)
    await expect.poll(async () => (await remakingAt(url, who))?.made ?? cases, until).toBeGreaterThan(0)
    await running.end('SIGKILL')
    const store = await open()
    const left = await store.remaking(who.clinic)
    await store.close()
    // Killed before the end, with some made that are still made.
    expect(left).toMatchObject({ of: cases })
    expect(left?.made).toBeGreaterThan(0)
    const again = await started(place)
    running = again.running
    url = again.url
  }
  await expect.poll(() => remakingAt(url, who), until).toBeNull()
  expect(await running.end('SIGTERM')).toBe(0)
  const store = await open()
  expect(await store.remaking(who.clinic)).toBeNull()
  const lists = [await store.owed(who.clinic), await store.cases(who.clinic)]
  expect(lists[1]).toHaveLength(cases)
  await store.rebuild(who.clinic)
  expect([await store.owed(who.clinic), await store.cases(who.clinic)]).toEqual(lists)
  await store.close()
}

describe('lists that are being made again when the server is killed', () => {
  it('are gone on with by the next start, to the lists of a rebuild, on the embedded store', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'quiet-ear-'))
    try {
      await killedOnTheWay(folder, () => openLockedFolder(folder, { project: projectForTests }))
    } finally {
      rmSync(folder, { recursive: true, force: true })
    }
  })

  describe.skipIf(skipPostgres)('on PostgreSQL', () => {
    let postgres: PostgresForTests
    beforeAll(async () => {
      postgres = await startPostgres()
    })
    afterAll(() => postgres?.stop())

    it('are gone on with by the next start, to the lists of a rebuild', async () => {
      const address = await postgres.newDatabase()
      await killedOnTheWay(address, () => openPostgres(address, { project: projectForTests }))
    })

    it('are gone on with at once by the other process on the database', async () => {
      const address = await postgres.newDatabase()
      const [first, second] = [await started(address), await started(address)]
      const who = await openClinic(first.url, first.running.code)
      const make = makerOf(who)
      const entries = Array.from({ length: cases }, (_, at) => make({ stream: `case:${1_000 + at}` }))
      for (let at = 0; at < cases; at += 100) await postEntries(first.url, entries.slice(at, at + 100), who)
      await close(first.url, '2026-12-25', who)
      await first.running.end('SIGKILL')
      await expect.poll(() => remakingAt(second.url, who), until).toBeNull()
      expect(await second.running.end('SIGTERM')).toBe(0)
      const store = await openPostgres(address, { project: projectForTests })
      const days = (await store.cases(who.clinic)).map(({ chapter }) => chapter.split(', ')[3])
      expect(new Set(days)).toEqual(new Set(['1 closed days']))
      await store.close()
    })
  })
})
