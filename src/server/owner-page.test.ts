import { gzipSync } from 'node:zlib'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { ClockForTests } from './clock-for-tests.ts'
import { House } from './house-for-tests.ts'

describe('the door of the owner’s page', () => {
  const clock = new ClockForTests()
  let house: House
  let desk: Awaited<ReturnType<House['join']>>
  let path = ''
  let id = ''
  const stream = 'case:bramble'
  beforeAll(async () => {
    house = await House.open({ clock })
    desk = await house.join('dora', 'desk')
    const row = { kind: 'owner', name: 'Olive Owner', practice: null, phone: null, email: null, address: [] }
    await desk.browser.act('put-row', { register: 'contact', id: 'contact-1', body: row })
    const sent = [desk.make({ stream, kind: 'identity' }), desk.make({ stream, kind: 'household' })]
    await desk.browser.send(sent, house.clinic)
    const made = await make()
    path = made.path
    id = made.id
  })
  afterAll(() => house?.close())

  const make = async (use = 'private'): Promise<{ id: string; path: string }> =>
    (await desk.browser.act('make-owner-link', { stream, contact: 'contact-1', use })).body
  const get = (address: string, init: RequestInit = {}) =>
    fetch(`${house.serving.url}${address}`, { redirect: 'manual', ...init })
  const send = (address: string, fields: Record<string, string>, headers: Record<string, string> = {}) =>
    get(address, { method: 'POST', body: new URLSearchParams(fields), headers: { origin: 'null', ...headers } })
  const wishes = async () =>
    (await desk.browser.act('read-case', { stream, after: null })).body.entries.filter(
      ({ header }: { header: { kind: string } }) => header.kind === 'owner-wishes',
    )
  const entryOn = async () => /name="entry" value="([^"]+)"/.exec(await (await get(path)).text())?.[1] ?? ''
  const closed = async (answer: Response) => [answer.status, (await answer.text()).includes('This page is closed')]

  it('opens the page of that one animal, for that person, kept by nobody on the way', async () => {
    const answer = await get(path)
    const page = await answer.text()
    expect(answer.status).toBe(200)
    expect(page).toContain('Hello Olive Owner. This page is about Bramble')
    expect(page).not.toContain(path.slice(3))
    const header = (name: string) => answer.headers.get(name)
    expect([header('cache-control'), header('referrer-policy'), header('set-cookie')]).toEqual([
      'no-store',
      'no-referrer',
      null,
    ])
    expect(header('x-robots-tag')).toContain('noindex')
    expect(header('content-security-policy')).toMatch(/default-src 'none'.*script-src 'self'.*style-src 'self'/)
  })

  it('sends no script at all, and little else', async () => {
    const page = await (await get(path)).text()
    // The house wants 40 kB of compressed script at most; there is none.
    const scripts = [...page.matchAll(/<script.*?<\/script>/gs)].join('')
    expect(gzipSync(scripts).length - gzipSync('').length).toBe(0)
    const style = await (await get('/o/page.css')).text()
    expect(style).toContain('font-size')
    expect(gzipSync(page).length + gzipSync(style).length).toBeLessThan(60_000)
  })

  it('shows one calm page, with the telephone of the clinic, for a token that is wrong, cut off or none', async () => {
    for (const address of [
      '/o/',
      '/o/short',
      `/o/${'A'.repeat(43)}`,
      `${path.slice(0, -1)}`,
      `${path}/more`,
      '/o/..%2f',
    ]) {
      const answer = await get(address)
      const page = await answer.text()
      expect([address, answer.status, page.includes('This page is closed')]).toEqual([address, 404, true])
      expect(page).toContain('Invented clinic: ')
      expect(page).not.toContain('Bramble')
    }
  })

  it('is closed the moment a link is ended or runs out, by the same page', async () => {
    const one = await make()
    expect((await get(one.path)).status).toBe(200)
    await desk.browser.act('revoke-owner-link', { link: one.id })
    expect(await closed(await get(one.path))).toEqual([404, true])
    const room = await make('in-room')
    expect((await get(room.path)).status).toBe(200)
    clock.pass({ seconds: 2 * 3_600 })
    const [ended, wrong] = [await get(room.path), await get(`/o/${'B'.repeat(43)}`)]
    expect([ended.status, await ended.text()]).toEqual([wrong.status, await wrong.text()])
  })

  it('opens nothing else of the clinic: a token is no session', async () => {
    const token = path.slice(3)
    const cookie = `quiet-ear-session=${token}`
    for (const action of ['read-case', 'list-owner-links', 'read-lists', 'who-am-i']) {
      const answer = await get(`/api/actions/${action}`, {
        method: 'POST',
        headers: { 'content-type': 'application/json', cookie, authorization: `Bearer ${token}` },
        body: JSON.stringify({ stream, after: null }),
      })
      expect([action, answer.status]).toEqual([action, 401])
    }
    expect(
      (await get(`/api/papers/${encodeURIComponent(stream)}/owner-leaflet.pdf`, { headers: { cookie } })).status,
    ).toBe(401)
  })

  it('keeps what the owner sends as an entry written by the link, once however often it is sent', async () => {
    const entry = await entryOn()
    const fields = { entry, 'matter-no-pain': 'very', leaning: 'not-decided', questions: 'Who looks after the eye?' }
    const answer = await send(path, fields)
    expect([answer.status, answer.headers.get('location')]).toEqual([303, '?sent=kept#wishes'])
    await send(path, fields)
    const [kept, ...others] = await wishes()
    expect(others).toEqual([])
    expect(kept.header.author).toEqual({ kind: 'owner-link', contact: 'contact-1' })
    expect(kept.body).toMatchObject({ leaning: 'not-decided', questions: 'Who looks after the eye?' })
    expect(await (await get(`${path}?sent=kept`)).text()).toContain('Thank you. We have it')
    // Said again another day, it stands beside what was said before.
    await send(path, { entry: await entryOn(), leaning: 'teca-lbo' })
    expect(await wishes()).toHaveLength(2)
  })

  it('keeps nothing of an empty form, of too much text, of an id of their own making, or from another site', async () => {
    const before = (await wishes()).length
    const entry = await entryOn()
    expect((await send(path, { entry })).headers.get('location')).toContain('sent=nothing')
    expect((await send(path, { entry, questions: 'x'.repeat(4_001) })).headers.get('location')).toContain(
      'sent=too-long',
    )
    expect((await send(path, { entry: 'mine', leaning: 'teca-lbo' })).headers.get('location')).toContain('sent=nothing')
    expect((await send(path, { entry, questions: 'x'.repeat(70_000) })).status).toBe(413)
    expect((await send(path, { entry, leaning: 'teca-lbo' }, { origin: 'https://elsewhere.example' })).status).toBe(403)
    expect(await closed(await send(`/o/${'C'.repeat(43)}`, { entry, leaning: 'teca-lbo' }))).toEqual([404, true])
    expect(await wishes()).toHaveLength(before)
  })

  it('writes down every opening, and never the token', async () => {
    const { links } = (await desk.browser.act('list-owner-links', { stream })).body
    expect(links.find((link: { id: string }) => link.id === id).lastOpenedAt).toBe(clock.now())
    const { lines } = (await house.manager.act('read-log', { stream })).body
    expect(lines).toContainEqual(expect.objectContaining({ person: 'contact-1', device: id, owner: 'Olive Owner' }))
    expect(house.log.some((line) => line.startsWith('GET /o/… 200'))).toBe(true)
    expect(house.log.join('\n')).not.toContain(path.slice(3))
  })

  it('slows a stranger down, and never whoever has a good link', async () => {
    const answers = []
    for (let n = 0; n < 30; n += 1) answers.push(await get(`/o/${String(n).padStart(43, 'D')}`))
    const last = answers.at(-1)
    expect(last?.status).toBe(429)
    expect(last?.headers.get('retry-after')).not.toBeNull()
    expect(await last?.text()).toContain('Wait a minute before you try again.')
    expect((await get(path)).status).toBe(200)
    expect(await closed(await get('/o/'))).toEqual([404, true])
  })

  it('shows whoever has a good link a quiet page when the animal has died, and keeps nothing that is sent', async () => {
    const [before, entry] = [(await wishes()).length, await entryOn()]
    await desk.browser.send([desk.make({ stream, kind: 'death' })], house.clinic)
    clock.pass({ seconds: 120 })
    for (const answer of [
      await get(path),
      await get(`${path}/home`),
      await get(`${path}/before`),
      await get(`${path}/leaflet.pdf`),
      await send(path, { entry, leaning: 'teca-lbo' }),
    ]) {
      const page = await answer.text()
      expect([answer.status, page.includes('We are sorry that Bramble has died.')]).toEqual([410, true])
      expect(page).not.toMatch(/<form|<nav|<script|<input/)
    }
    expect(await wishes()).toHaveLength(before)
    expect(await closed(await get(`/o/${'E'.repeat(43)}`))).toEqual([404, true])
  })
})
