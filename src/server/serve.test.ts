import { request } from 'node:http'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { MakeEntry } from '#core/journal/entries-for-tests.ts'
import { schemaVersion } from '#storage/migrate.ts'
import { type Browser, House } from './house-for-tests.ts'

describe('the server', () => {
  let house: House
  let browser: Browser
  let make: MakeEntry
  beforeAll(async () => {
    house = await House.open()
    const joined = await house.join('sven', 'surgeon')
    browser = joined.browser
    make = joined.make
  })
  afterAll(() => house?.close())

  const post = async (body: unknown, headers: Record<string, string> = {}) => {
    const { status, body: answer } = await browser.act('accept-entries', body, headers)
    return { status, body: answer }
  }
  const positions = async () => {
    let count = 0
    for await (const _ of house.serving.store.entries(house.clinic)) count += 1
    return count
  }

  it('tells its health: version, store, tables and how many clinics', async () => {
    const response = await fetch(`${house.serving.url}/api/health`)
    expect(await response.json()).toEqual({ version: '0.1.0', store: 'sqlite', schema: schemaVersion, clinics: 1 })
  })

  it('answers each entry with its envelope, the same again as already there, and other bytes with 409', async () => {
    const entry = make()
    const first = await post({ clinic: house.clinic, entries: [entry] })
    expect(first.status).toBe(200)
    expect(first.body.entries).toEqual([
      {
        id: entry.id,
        outcome: 'accepted',
        envelope: (await house.serving.store.entry(house.clinic, entry.id))?.envelope,
      },
    ])
    expect(await post({ clinic: house.clinic, entries: [entry] })).toEqual({
      status: 200,
      body: { entries: [{ id: entry.id, outcome: 'already' }] },
    })
    const other = { ...entry, body: { text: 'Other.' } }
    expect(await post({ clinic: house.clinic, entries: [other] })).toEqual({
      status: 409,
      body: { entries: [{ id: entry.id, outcome: 'kept-aside' }] },
    })
  })

  it('names entry and field of a wrong one and keeps nothing of the request', async () => {
    const before = await positions()
    const wrong = { ...make({ kind: 'weight' }), body: { weight: { value: '12', unit: 'lb' } } }
    const answered = await post({ clinic: house.clinic, entries: [make(), wrong] })
    expect(answered.status).toBe(400)
    expect(answered.body.error).toMatchObject({ code: 'wrong-body', path: 'entries[1].body.weight.unit' })
    expect(await positions()).toBe(before)
  })

  it('refuses what would not be kept byte for byte', async () => {
    const entry = make()
    const extra = { ...entry, device: { ...entry.device, colour: 'red' } }
    expect((await post({ clinic: house.clinic, entries: [extra] })).body.error.path).toBe('entries[0]')
    const half = JSON.stringify({ clinic: house.clinic, entries: [make({ body: { text: '?' } })] })
    expect((await post(half.replace('"?"', '"\\ud800"'))).body.error.message).toContain('half a character')
    const proto = JSON.stringify({ clinic: house.clinic, entries: [{ ...make(), kind: 'from-tomorrow' }] })
    expect((await post(proto.replace('"text"', '"__proto__"'))).status).toBe(400)
  })

  it('answers a body nested without end, and a list of targets without end, with a sentence', async () => {
    const deep = `${'['.repeat(50_000)}${']'.repeat(50_000)}`
    const text = JSON.stringify({ clinic: house.clinic, entries: [{ ...make(), kind: 'from-tomorrow', body: 'DEEP' }] })
    expect(await post(text.replace('"DEEP"', deep))).toMatchObject({
      status: 400,
      body: { error: { code: 'not-an-entry' } },
    })
    const supersedes = Array.from({ length: 150_000 }, () => make().id)
    const long = await post({ clinic: house.clinic, entries: [make({ supersedes, reason: 'All of them.' })] })
    expect(long).toMatchObject({ status: 400, body: { error: { path: 'entries[0].supersedes' } } })
  })

  it('refuses another clinic, no JSON, the wrong type, too much, and no such address, each with a sentence', async () => {
    const statuses = [
      await post({ clinic: 'clinic-2', entries: [make()] }),
      await post('{"clinic":'),
      await post({ clinic: house.clinic, entries: [make()] }, { 'content-type': 'text/plain' }),
      await post(`"${'x'.repeat(9 * 1024 * 1024)}"`),
      await fetch(`${house.serving.url}/api/nothing`).then(async (r) => ({ status: r.status, body: await r.json() })),
    ]
    expect(statuses.map(({ status }) => status)).toEqual([400, 400, 400, 413, 404])
    for (const { body } of statuses) expect(body.error.message).toMatch(/\w+ \w+/)
  })

  it('turns away pages of other sites, also of another port, and foreign names that were pointed here', async () => {
    const one = () => ({ clinic: house.clinic, entries: [make()] })
    const foreign = ['https://elsewhere.example', 'null', 'http://[', 'localhost', 'http://127.0.0.1:9', 'file://x']
    for (const origin of foreign) expect([origin, (await post(one(), { origin })).status]).toEqual([origin, 403])
    expect((await post(one(), { 'sec-fetch-site': 'cross-site' })).status).toBe(403)
    expect((await post(one(), { 'sec-fetch-site': 'same-site' })).status).toBe(403)
    expect((await post(one(), { origin: house.serving.url, 'sec-fetch-site': 'same-origin' })).status).toBe(200)
    expect(await statusFor({ host: 'elsewhere.example' })).toBe(403)
    expect(await statusFor({ host: 'clinic.lan.elsewhere.example' })).toBe(403)
  })

  it('answers to its address and to names of the house, each only for pages of that same name', async () => {
    for (const host of [
      'localhost:1',
      '192.168.1.20:4280',
      '[::1]:4280',
      'clinic.lan',
      'Ears.local:4280',
      'quiet-ear',
    ]) {
      expect([host, await statusFor({ host })]).toEqual([host, 200])
      expect([host, await statusFor({ host, origin: `http://${host.toLowerCase()}` })]).toEqual([host, 200])
      expect([host, await statusFor({ host, origin: `https://${host.toLowerCase()}` })]).toEqual([host, 200])
      expect([host, await statusFor({ host, origin: 'http://other.lan' })]).toEqual([host, 403])
    }
    expect(await statusFor({ host: 'clinic.lan', origin: 'http://clinic.lan:8080' })).toBe(403)
  })

  it('answers to a public name only where the clinic named it', async () => {
    const named = await House.closed({ names: ['ears.clinic.example'] })
    expect(await statusFor({ host: 'ears.clinic.example' }, named.serving.url)).toBe(200)
    expect(await statusFor({ host: 'other.clinic.example' }, named.serving.url)).toBe(403)
    await named.close()
  })

  it('sends no page of ours into a frame, and lets none load or run anything from elsewhere', async () => {
    const { headers } = await fetch(`${house.serving.url}/api/health`)
    expect(headers.get('content-security-policy')?.split('; ').sort()).toEqual([
      "base-uri 'none'",
      "connect-src 'self'",
      "default-src 'none'",
      "font-src 'self'",
      "form-action 'self'",
      "frame-ancestors 'none'",
      "img-src 'self' blob: data:",
      "manifest-src 'self'",
      "script-src 'self'",
      "style-src 'self'",
      "worker-src 'self'",
    ])
    expect(headers.get('x-content-type-options')).toBe('nosniff')
    expect(headers.get('referrer-policy')).toBe('no-referrer')
    expect(headers.get('cache-control')).toBe('no-store')
    expect(headers.get('cross-origin-opener-policy')).toBe('same-origin')
    expect(headers.get('access-control-allow-origin')).toBeNull()
  })

  it('describes itself, every action included', async () => {
    const response = await fetch(`${house.serving.url}/api/openapi.json`)
    const { openapi, paths } = (await response.json()) as { openapi: string; paths: object }
    expect(openapi).toBe('3.1.0')
    expect(Object.keys(paths)).toContain('/api/actions/accept-entries')
  })

  it('writes down what was asked and how it ended, and nothing about anybody', async () => {
    house.log.length = 0
    await post({
      clinic: house.clinic,
      entries: [make({ stream: 'case:bramble', body: { text: 'Mrs Okafor rang.' } })],
    })
    await browser.signIn('sven', 'a wrong password')
    await fetch(`${house.serving.url}/api/files/somebody?name=okafor`)
    expect(house.log).toHaveLength(3)
    expect(house.log[0]).toMatch(/^POST \/api\/actions\/accept-entries 200 \d+ ms$/)
    expect(house.log[1]).toMatch(/^POST \/api\/actions\/sign-in 401 \d+ ms$/)
    expect(house.log.join()).not.toMatch(/okafor|bramble|sven|password|127\.0/i)
  })

  const statusFor = (headers: Record<string, string>, url = house.serving.url) =>
    new Promise((resolve, reject) => {
      request(`${url}/api/health`, { headers }, (response) => {
        response.resume()
        resolve(response.statusCode)
      })
        .once('error', reject)
        .end()
    })
})
