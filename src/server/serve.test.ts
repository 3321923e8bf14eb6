import { mkdtempSync, rmSync } from 'node:fs'
import { request } from 'node:http'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { schemaVersion } from '#storage/migrate.ts'
import { projectForTests } from '#storage/projector-for-tests.ts'
import { type Serving, serve } from './serve.ts'

type Answer = {
  readonly entries?: unknown
  readonly error: { readonly code: string; readonly path: string; readonly message: string }
}

describe('the server', () => {
  const folder = mkdtempSync(join(tmpdir(), 'quiet-ear-'))
  let serving: Serving
  beforeAll(async () => {
    serving = await serve({ dataDir: folder, port: 0, project: projectForTests, log: () => undefined })
  })
  afterAll(async () => {
    await serving?.close()
    rmSync(folder, { recursive: true, force: true })
  })

  const post = async (body: unknown, headers: Record<string, string> = {}) => {
    const response = await fetch(`${serving.url}/api/actions/accept-entries`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', ...headers },
      body: typeof body === 'string' ? body : JSON.stringify(body),
    })
    return { status: response.status, body: (await response.json()) as Answer }
  }
  const make = entryMaker()
  const positions = async () => {
    let count = 0
    for await (const _ of serving.store.entries('clinic-1')) count += 1
    return count
  }

  it('tells its health: version, store, tables and how many clinics', async () => {
    const response = await fetch(`${serving.url}/api/health`)
    expect(await response.json()).toEqual({ version: '0.1.0', store: 'sqlite', schema: schemaVersion, clinics: 0 })
  })

  it('answers each entry with its envelope, the same again as already there, and other bytes with 409', async () => {
    const entry = make()
    const first = await post({ clinic: 'clinic-1', entries: [entry] })
    expect(first.status).toBe(200)
    expect(first.body.entries).toEqual([
      { id: entry.id, outcome: 'accepted', envelope: (await serving.store.entry('clinic-1', entry.id))?.envelope },
    ])
    expect(await post({ clinic: 'clinic-1', entries: [entry] })).toEqual({
      status: 200,
      body: { entries: [{ id: entry.id, outcome: 'already' }] },
    })
    const other = { ...entry, body: { text: 'Other.' } }
    expect(await post({ clinic: 'clinic-1', entries: [other] })).toEqual({
      status: 409,
      body: { entries: [{ id: entry.id, outcome: 'kept-aside' }] },
    })
  })

  it('names entry and field of a wrong one and keeps nothing of the request', async () => {
    const before = await positions()
    const wrong = { ...make({ kind: 'weight' }), body: { weight: { value: '12', unit: 'lb' } } }
    const answered = await post({ clinic: 'clinic-1', entries: [make(), wrong] })
    expect(answered.status).toBe(400)
    expect(answered.body.error).toMatchObject({ code: 'wrong-body', path: 'entries[1].body.weight.unit' })
    expect(await positions()).toBe(before)
  })

  it('refuses what would not be kept byte for byte', async () => {
    const entry = make()
    const extra = { ...entry, device: { ...entry.device, colour: 'red' } }
    expect((await post({ clinic: 'clinic-1', entries: [extra] })).body.error.path).toBe('entries[0]')
    const half = JSON.stringify({ clinic: 'clinic-1', entries: [make({ body: { text: '?' } })] })
    expect((await post(half.replace('"?"', '"\\ud800"'))).body.error.message).toContain('half a character')
    const proto = JSON.stringify({ clinic: 'clinic-1', entries: [{ ...make(), kind: 'from-tomorrow' }] })
    expect((await post(proto.replace('"text"', '"__proto__"'))).status).toBe(400)
  })

  it('takes a clinic whose name a device writes with separate accents', async () => {
    const clinic = 'cliniqu\u0065\u0301'
    expect((await post({ clinic, entries: [make({ clinic })] })).status).toBe(200)
    expect(await serving.store.stream('cliniqu\u00e9', 'case:0001')).toHaveLength(1)
  })

  it('answers a body nested without end, and a list of targets without end, with a sentence', async () => {
    const deep = `${'['.repeat(50_000)}${']'.repeat(50_000)}`
    const text = JSON.stringify({ clinic: 'clinic-1', entries: [{ ...make(), kind: 'from-tomorrow', body: 'DEEP' }] })
    expect(await post(text.replace('"DEEP"', deep))).toMatchObject({
      status: 400,
      body: { error: { code: 'not-an-entry' } },
    })
    const supersedes = Array.from({ length: 150_000 }, () => make().id)
    const long = await post({ clinic: 'clinic-1', entries: [make({ supersedes, reason: 'All of them.' })] })
    expect(long).toMatchObject({ status: 400, body: { error: { path: 'entries[0].supersedes' } } })
  })

  it('refuses another clinic, no JSON, the wrong type, too much, and no such address, each with a sentence', async () => {
    const statuses = [
      await post({ clinic: 'clinic-2', entries: [make()] }),
      await post('{"clinic":'),
      await post({ clinic: 'clinic-1', entries: [make()] }, { 'content-type': 'text/plain' }),
      await post(`"${'x'.repeat(9 * 1024 * 1024)}"`),
      await fetch(`${serving.url}/api/nothing`).then(async (r) => ({
        status: r.status,
        body: (await r.json()) as Answer,
      })),
    ]
    expect(statuses.map(({ status }) => status)).toEqual([400, 400, 400, 413, 404])
    for (const { body } of statuses) expect(body.error.message).toMatch(/\w+ \w+/)
  })

  it('turns away pages of other sites and foreign names', async () => {
    expect(
      (await post({ clinic: 'clinic-1', entries: [make()] }, { origin: 'https://elsewhere.example' })).status,
    ).toBe(403)
    for (const origin of ['null', 'http://[', 'localhost']) {
      expect((await post({ clinic: 'clinic-1', entries: [make()] }, { origin })).status).toBe(403)
    }
    expect((await post({ clinic: 'clinic-1', entries: [make()] }, { origin: serving.url })).status).toBe(200)
    expect(await statusForHost('elsewhere.example')).toBe(403)
    expect(await statusForHost('localhost:1')).toBe(200)
  })

  const statusForHost = (host: string) =>
    new Promise((resolve, reject) => {
      request(`${serving.url}/api/health`, { headers: { host } }, (response) => {
        response.resume()
        resolve(response.statusCode)
      })
        .once('error', reject)
        .end()
    })
})
