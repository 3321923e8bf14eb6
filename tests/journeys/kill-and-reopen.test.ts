import { spawnSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Store } from '#actions/store.ts'
import { firstBreak } from '#core/journal/chain.ts'
import type { MakeEntry } from '#core/journal/entries-for-tests.ts'
import type { StoredEntry } from '#core/journal/entry.ts'
import { type PostgresForTests, skipPostgres, startPostgres } from '#storage/postgres/for-tests.ts'
import { openPostgres } from '#storage/postgres/open.ts'
import { projectForTests } from '#storage/projector-for-tests.ts'
import { openLockedFolder } from '#storage/sqlite/open.ts'
import {
  buildServer,
  endAll,
  makerOf,
  openClinic,
  postEntries,
  ServerProcess,
  type SignedIn,
} from './server-process.ts'

let server: string
beforeAll(async () => {
  server = await buildServer('kill-and-reopen')
})
afterAll(endAll)

const folders: string[] = []
const disks: string[] = []
const newFolder = () => {
  const folder = mkdtempSync(join(tmpdir(), 'quiet-ear-'))
  folders.push(folder)
  return folder
}
afterAll(() => {
  // Lazily: the driver lets go of a closed data file only when its statements are collected.
  for (const disk of disks) spawnSync('umount', ['-l', disk])
  for (const folder of folders) rmSync(folder, { recursive: true, force: true })
})

/** Four writers, each with ids of its own, that go on until the server is gone. Returns the ids that were acknowledged. */
async function writeUntilGone(
  url: string,
  makers: readonly MakeEntry[],
  who: SignedIn,
  answered: () => void,
): Promise<string[]> {
  const acknowledged: string[] = []
  await Promise.all(
    makers.map(async (make, writer) => {
      for (let turn = 0; ; turn += 1) {
        const entries = Array.from({ length: 1 + (turn % 4) }, () => make({ stream: `case:000${(writer + turn) % 6}` }))
        const posted = await postEntries(url, entries, who).catch(() => undefined)
        if (!posted) return
        expect(posted.status).toBe(200)
        answered()
        for (const { id, outcome } of posted.body.entries ?? []) if (outcome === 'accepted') acknowledged.push(id)
      }
    }),
  )
  return acknowledged
}

async function journalOf(store: Store, clinic: string): Promise<StoredEntry[]> {
  const entries: StoredEntry[] = []
  for await (const entry of store.entries(clinic)) entries.push(entry)
  return entries
}

/** Everything acknowledged is there, every chain verifies, and the lists are what the journal says. */
async function proveWhole(store: Store, acknowledged: ReadonlySet<string>, clinic: string): Promise<number> {
  const journal = await journalOf(store, clinic)
  const present = new Set(journal.map(({ header }) => header.id))
  expect([...acknowledged].filter((id) => !present.has(id))).toEqual([])
  expect(firstBreak(journal)).toBeUndefined()
  while (await store.remakeNext(clinic));
  const lists = [await store.owed(clinic), await store.cases(clinic)]
  await store.rebuild(clinic)
  expect([await store.owed(clinic), await store.cases(clinic)]).toEqual(lists)
  return journal.length
}

/** A server on a new place, its clinic opened. It may be killed at once: whoever signed in stays signed in. */
async function openedServer(place: string, ...more: string[]) {
  const running = new ServerProcess(server, [place, ...more])
  const url = (await running.url) ?? ''
  return { running, url, who: await openClinic(url, running.code) }
}

/** Rounds of start, write, SIGKILL at another moment each time; the first rounds die while the server is starting. */
async function killRounds(rounds: number, place: string, open: () => Promise<Store>): Promise<void> {
  const first = await openedServer(place)
  const { who } = first
  await first.running.end('SIGKILL')
  const makers = [1, 2, 3, 4].map((writer) => makerOf(who, writer))
  const acknowledged = new Set<string>()
  let whole = 0
  let written = 0
  for (let round = 0; round < rounds; round += 1) {
    const running = new ServerProcess(server, [place])
    const dying = round % 10 === 0
    const url = dying ? undefined : await running.url
    if (!dying && !url) throw new Error(`The server did not start in round ${round}: ${running.errors}`)
    const delay = dying ? 120 + round * 9 : 40 + ((round * 73) % 260) + Math.random() * 20
    let answered = () => {}
    const firstAnswer = new Promise<void>((resolve) => {
      answered = resolve
    })
    const writing = url ? writeUntilGone(url, makers, who, answered) : Promise.resolve([])
    // Every other round is killed in its first request, or soon after: the others when at least one was answered.
    if (url && round % 2 === 1) await firstAnswer
    await new Promise((resolve) => setTimeout(resolve, delay))
    await running.end('SIGKILL')
    const now = await writing
    for (const id of now) acknowledged.add(id)
    if (now.length > 0) written += 1
    // In every other round the next server, not this test, is the first to find what the killed one left.
    if (round % 2 === 0) continue
    const store = await open()
    try {
      whole = await proveWhole(store, acknowledged, who.clinic)
    } finally {
      await store.close()
    }
  }
  expect(written).toBeGreaterThanOrEqual(rounds / 2)
  expect(whole).toBeGreaterThanOrEqual(acknowledged.size)
  console.log(`${rounds} kills: ${acknowledged.size} entries acknowledged, all there among ${whole}.`)
}

describe('a server that is killed', () => {
  it('loses no acknowledged entry in 20 rounds of SIGKILL under four writers on the embedded store', async () => {
    const folder = newFolder()
    await killRounds(20, folder, () => openLockedFolder(folder, { project: projectForTests }))
  })

  describe.skipIf(skipPostgres)('on PostgreSQL', () => {
    let postgres: PostgresForTests
    beforeAll(async () => {
      postgres = await startPostgres()
    })
    afterAll(() => postgres?.stop())

    it('loses no acknowledged entry in 6 rounds of SIGKILL under four writers', async () => {
      const address = await postgres.newDatabase()
      await killRounds(6, address, () => openPostgres(address, { project: projectForTests }))
    })

    it('gives gapless positions to two server processes on one database', async () => {
      const address = await postgres.newDatabase()
      // Signed in at one process is signed in at the other.
      const first = await openedServer(address)
      const { who } = first
      const servers = [first.running, new ServerProcess(server, [address])]
      const urls = await Promise.all(servers.map(({ url }) => url))
      const acknowledged: string[] = []
      await Promise.all(
        [1, 2, 3, 4].map(async (writer) => {
          const make = makerOf(who, writer)
          for (let turn = 0; turn < 20; turn += 1) {
            const { status, body } = await postEntries(urls[writer % 2] ?? '', [make(), make()], who)
            expect(status).toBe(200)
            acknowledged.push(...(body.entries ?? []).map(({ id }) => id))
          }
        }),
      )
      expect(await Promise.all(servers.map((one) => one.end('SIGTERM')))).toEqual([0, 0])
      const store = await openPostgres(address, { project: projectForTests })
      expect(await proveWhole(store, new Set(acknowledged), who.clinic)).toBe(160)
      await store.close()
    })
  })
})

describe('one server for one folder', () => {
  it('refuses a second one within 5 seconds with one sentence, and lets it in when the first is killed', async () => {
    const folder = newFolder()
    const { running: first, url, who } = await openedServer(folder)
    expect((await postEntries(url, [makerOf(who)()], who)).status).toBe(200)
    const began = performance.now()
    const second = new ServerProcess(server, [join(folder, '..', folder.split('/').at(-1) ?? '')])
    expect(await second.ended).toBe(2)
    expect(performance.now() - began).toBeLessThan(5_000)
    expect(second.errors).toMatch(
      /^Another Quiet Ear is running on the data folder .+: use that one, stop it first, .+\.\n$/,
    )
    expect(second.errors).toContain(folder)
    expect((await fetch(`${url}/api/health`)).status).toBe(200)
    await first.end('SIGKILL')
    const third = new ServerProcess(server, [folder])
    expect(await third.url).toMatch(/^http:/)
    expect(third.code).toBe('')
    expect(await third.end('SIGTERM')).toBe(0)
  })
})

/** A file system of a few MiB of its own, or undefined where this machine does not allow one. */
function smallDisk(mebibytes: number): string | undefined {
  const folder = newFolder()
  const mounted = spawnSync('mount', ['-t', 'tmpfs', '-o', `size=${mebibytes}m`, 'quiet-ear-test', folder])
  if (mounted.status !== 0) return undefined
  disks.push(folder)
  return folder
}

describe('a full disk', () => {
  const disk = smallDisk(24)
  if (!disk) console.warn('SKIPPED: a full disk, because this machine lets us mount no small file system (needs root).')
  const paper = 'x'.repeat(9_000)
  const fillUp = async (url: string, make: MakeEntry, acknowledged: Set<string>, who: SignedIn) => {
    for (let turn = 0; turn < 2_000; turn += 1) {
      // A stream per delivery, so that the time goes into writing and not into folding one long case.
      const entries = [1, 2, 3, 4].map(() => make({ body: { text: paper }, stream: `case:${turn}` }))
      const { status, body } = await postEntries(url, entries, who)
      if (status !== 200) return { status, body }
      for (const { id } of body.entries ?? []) acknowledged.add(id)
    }
    throw new Error('The disk never became full.')
  }

  it.skipIf(!disk).each([
    { name: 'is nearly full stops the writing early', leaveFree: 6 * 1024 * 1024, says: 'must stay free' },
    { name: 'has no room for one more page refuses it', leaveFree: 0, says: 'is full' },
  ])('$name: nothing is lost, and it goes on when there is room', async ({ leaveFree, says }) => {
    const folder = join(disk ?? '', `at-${leaveFree}`)
    mkdirSync(folder)
    const filler = join(disk ?? '', 'other-things')
    writeFileSync(filler, Buffer.alloc(12 * 1024 * 1024))
    const { running, url, who } = await openedServer(folder, String(leaveFree))
    const make = makerOf(who)
    const acknowledged = new Set<string>()
    const refused = await fillUp(url, make, acknowledged, who)
    expect(refused.status).toBe(507)
    expect(refused.body.error?.code).toBe('store-full')
    expect(refused.body.error?.message).toContain(says)
    expect(refused.body.error?.message).toContain('everything accepted so far is safe')
    expect(acknowledged.size).toBeGreaterThan(20)
    expect((await fetch(`${url}/api/health`)).status).toBe(200)
    rmSync(filler)
    const { status, body } = await postEntries(url, [make(), make()], who)
    expect(status).toBe(200)
    for (const { id } of body.entries ?? []) acknowledged.add(id)
    await running.end('SIGKILL')
    const store = await openLockedFolder(folder, { project: projectForTests, leaveFreeBytes: 0 })
    await proveWhole(store, acknowledged, who.clinic)
    await store.close()
    rmSync(folder, { recursive: true })
  })
})
