import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Store } from '#actions/store.ts'
import { type PostgresForTests, skipPostgres, startPostgres } from '#storage/postgres/for-tests.ts'
import { House } from './house-for-tests.ts'
import { Live } from './live.ts'

/** A busy machine is no fault of the code; only the entry's way to the other screen is timed. */
const patient = { timeout: 30_000, interval: 5 }

type Event = { readonly event: string; readonly data: unknown }

/** A screen that listens, as a browser's EventSource does: it reads the stream and keeps what it was told. */
class Listener {
  readonly events: Event[] = []
  readonly status: number
  readonly type: string | null
  ended = false
  readonly #abort: AbortController

  private constructor(response: Response, abort: AbortController) {
    this.status = response.status
    this.type = response.headers.get('content-type')
    this.#abort = abort
    this.#read(response).then(
      () => {
        this.ended = true
      },
      () => {
        this.ended = true
      },
    )
  }

  static async at(url: string, cookie: string | null): Promise<Listener> {
    const abort = new AbortController()
    const headers: Record<string, string> = cookie === null ? {} : { cookie }
    return new Listener(await fetch(`${url}/api/live`, { headers, signal: abort.signal }), abort)
  }

  changes(): { position: number; streams: string[] }[] {
    return this.events.filter(({ event }) => event === 'change').map(({ data }) => data as never)
  }

  hangUp(): void {
    this.#abort.abort()
  }

  async #read(response: Response): Promise<void> {
    let text = ''
    for await (const chunk of response.body ?? []) {
      text += new TextDecoder().decode(chunk)
      const blocks = text.split('\n\n')
      text = blocks.pop() ?? ''
      for (const block of blocks) {
        const event = /^event: (.*)$/m.exec(block)?.[1] ?? ''
        const data = /^data: (.*)$/m.exec(block)?.[1] ?? 'null'
        this.events.push({ event, data: JSON.parse(data) })
      }
    }
  }
}

function liveContract(options: () => Promise<{ databaseUrl?: string }>): void {
  let house: House
  beforeAll(async () => {
    house = await House.open(await options())
  })
  afterAll(() => house?.close())

  it('tells another screen of an accepted entry within a second, and of a written row', async () => {
    const { browser, make } = await house.join('nora', 'nurse')
    const listener = await Listener.at(house.serving.url, house.manager.cookie)
    expect([listener.status, listener.type]).toEqual([200, 'text/event-stream'])
    await expect.poll(() => listener.events.length, patient).toBeGreaterThan(0)
    expect(listener.events[0]).toEqual({ event: 'here', data: {} })
    const { body } = await browser.send([make(), make({ stream: 'case:0002' })], house.clinic)
    await expect.poll(() => listener.changes().length, patient).toBe(1)
    expect(listener.changes()).toEqual([
      { position: body.entries[1].envelope.position, streams: ['case:0001', 'case:0002'] },
    ])
    const times: number[] = []
    for (let round = 0; round < 9; round += 1) {
      const began = performance.now()
      await browser.send([make()], house.clinic)
      await expect.poll(() => listener.changes().length, patient).toBe(round + 2)
      times.push(performance.now() - began)
    }
    expect(times.sort((a, b) => a - b)[4]).toBeLessThan(1_000)
    const contact = { kind: 'vet', name: 'Elin', practice: null, phone: null, email: null, address: [] }
    await browser.act('put-row', { register: 'contact', id: 'contact-elin', body: contact })
    await expect.poll(() => listener.changes().at(-1)?.streams, patient).toEqual(['register:contact'])
    listener.hangUp()
  })

  it('lets nobody listen who is not signed in', async () => {
    const listener = await Listener.at(house.serving.url, null)
    expect([listener.status, listener.type]).toEqual([401, 'application/json'])
  })

  it('ends every line when the server is asked to end, at once', async () => {
    const listener = await Listener.at(house.serving.url, house.manager.cookie)
    await expect.poll(() => listener.events.length, patient).toBeGreaterThan(0)
    const began = performance.now()
    await house.serving.close()
    // Not after the five seconds that a request in progress is given.
    expect(performance.now() - began).toBeLessThan(4_000)
    await expect.poll(() => listener.ended, patient).toBe(true)
    await house.start()
  })
}

describe('what changes, told to every screen', () => {
  describe('on the embedded store', () => liveContract(async () => ({})))

  describe.skipIf(skipPostgres)('on PostgreSQL', () => {
    let postgres: PostgresForTests
    beforeAll(async () => {
      postgres = await startPostgres()
    })
    afterAll(() => postgres?.stop())
    liveContract(async () => ({ databaseUrl: await postgres.newDatabase() }))

    it('crosses from one server process to another on one database', async () => {
      const databaseUrl = await postgres.newDatabase()
      const one = await House.open({ databaseUrl })
      const two = await House.closed({ databaseUrl })
      const listener = await Listener.at(two.serving.url, one.manager.cookie)
      await expect.poll(() => listener.events.length, patient).toBeGreaterThan(0)
      await one.manager.send([one.maker(one.managerId)()], one.clinic)
      await expect.poll(() => listener.changes().length, patient).toBe(1)
      await Promise.all([one.close(), two.close()])
    })
  })
})

describe('the lines to the screens', () => {
  const open = async (every?: number) => {
    let listeners: Parameters<Store['watch']>[0] | undefined
    const watch: Store['watch'] = async (listener) => {
      listeners = listener
      return () => undefined
    }
    const live = await Live.open({ watch }, every)
    return {
      live,
      change: (streams: string[], clinic = 'c') => listeners?.changed({ clinic, position: 1, streams }),
      missed: () => listeners?.missed(),
    }
  }
  const may = async () => true

  it('forget a screen that went away', async () => {
    const { live } = await open()
    const reader = live.listen('c', may).body?.getReader()
    await reader?.read()
    expect(live.size).toBe(1)
    await reader?.cancel()
    expect(live.size).toBe(0)
  })

  it('tell nobody of another clinic', async () => {
    const { live, change } = await open()
    const reader = live.listen('c', may).body?.getReader()
    await reader?.read()
    change(['case:1'], 'another')
    change(['case:2'])
    expect(new TextDecoder().decode((await reader?.read())?.value)).toBe(
      'event: change\ndata: {"position":1,"streams":["case:2"]}\n\n',
    )
    live.close()
    expect((await reader?.read())?.done).toBe(true)
  })

  it('end for a screen that does not read, rather than keep everything for it', async () => {
    const { live, change } = await open()
    const reader = live.listen('c', may).body?.getReader()
    for (let at = 0; at < 2_000; at += 1) change([`case:${at}`])
    expect((await reader?.read())?.done).toBe(true)
    expect(live.size).toBe(0)
  })

  it('say now and then that the server is there, and end when the session did', async () => {
    const { live } = await open(20)
    let signedIn = true
    const reader = live.listen('c', async () => signedIn).body?.getReader()
    await reader?.read()
    expect(new TextDecoder().decode((await reader?.read())?.value)).toContain('event: here')
    signedIn = false
    for (;;) if ((await reader?.read())?.done) break
    expect(live.size).toBe(0)
    live.close()
  })

  it('end when something may have been missed, so that every screen reads anew', async () => {
    const { live, missed } = await open()
    const reader = live.listen('c', may).body?.getReader()
    await reader?.read()
    missed()
    expect((await reader?.read())?.done).toBe(true)
  })
})
