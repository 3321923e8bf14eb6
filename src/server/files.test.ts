import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { hashBytes } from '#core/journal/canonical.ts'
import { House } from './house-for-tests.ts'

const paper = new TextEncoder().encode('%PDF-1.7\n%%EOF\n')
const letter = new TextEncoder().encode('Dear colleague')

describe('pictures and papers', () => {
  let house: House
  beforeAll(async () => {
    house = await House.open()
  })
  afterAll(() => house?.close())

  const ask = (path: string, init: RequestInit = {}, cookie = house.manager.cookie) =>
    fetch(`${house.serving.url}${path}`, { ...init, headers: { ...init.headers, ...(cookie && { cookie }) } })
  const put = (bytes: Uint8Array, type: string, cookie?: string | null) =>
    ask(
      '/api/files',
      { method: 'PUT', body: bytes as Uint8Array<ArrayBuffer>, headers: { 'content-type': type } },
      cookie,
    )

  it('are kept under their hash and given back as what they were sent in as, and may do nothing', async () => {
    const sent = await put(letter, 'text/plain')
    expect([sent.status, await sent.json()]).toEqual([200, { hash: hashBytes(letter), bytes: 14 }])
    const got = await ask(`/api/files/${hashBytes(letter)}`)
    expect(await got.text()).toBe('Dear colleague')
    expect(Object.fromEntries(got.headers)).toMatchObject({
      'content-type': 'text/plain; charset=utf-8',
      'content-disposition': `attachment; filename="${hashBytes(letter).slice(0, 12)}.txt"`,
      'x-content-type-options': 'nosniff',
      'cache-control': 'private, no-cache',
    })
    expect(got.headers.get('content-security-policy')).toMatch(/^default-src 'none'/)
    expect(got.headers.get('content-security-policy')).not.toContain('script-src')
  })

  it('are shown when they are pictures or papers, and not sent again when the browser has them', async () => {
    const { hash } = (await (await put(paper, 'application/pdf')).json()) as { hash: string }
    const got = await ask(`/api/files/${hash}`)
    expect(got.headers.get('content-type')).toBe('application/pdf')
    expect(got.headers.get('content-disposition')).toMatch(/^inline; /)
    const again = await ask(`/api/files/${hash}`, { headers: { 'if-none-match': got.headers.get('etag') ?? '' } })
    expect([again.status, await again.text()]).toEqual([304, ''])
  })

  it('are for people who are signed in: nobody else puts, gets, or learns whether one is there', async () => {
    const statuses = await Promise.all([
      put(letter, 'text/plain', ''),
      ask(`/api/files/${hashBytes(letter)}`, {}, ''),
      ask(`/api/files/${'0'.repeat(64)}`, {}, ''),
    ])
    expect(statuses.map(({ status }) => status)).toEqual([401, 401, 401])
    const { browser } = await house.join('rita', 'read-only')
    expect((await put(letter, 'text/plain', browser.cookie)).status).toBe(403)
    expect((await ask(`/api/files/${hashBytes(letter)}`, {}, browser.cookie ?? '')).status).toBe(200)
  })

  it('are refused with a sentence when they are not what they say, too large, empty, or gone', async () => {
    const answers = await Promise.all([
      put(letter, 'image/jpeg'),
      put(letter, 'text/html'),
      put(new Uint8Array(0), 'text/plain'),
      put(new Uint8Array(41 * 1024 * 1024), 'text/plain'),
      ask(`/api/files/${'0'.repeat(64)}`),
      ask('/api/files/..%2f..%2fquiet-ear.db'),
    ])
    expect(answers.map(({ status }) => status)).toEqual([400, 400, 400, 413, 404, 404])
    for (const answer of answers) {
      expect(((await answer.json()) as { error: { message: string } }).error.message).toMatch(/\w+ \w+/)
    }
  })
})
