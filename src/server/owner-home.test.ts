import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { ClockForTests } from './clock-for-tests.ts'
import { House } from './house-for-tests.ts'

describe('the link once the animal is at home', () => {
  const clock = new ClockForTests()
  let house: House
  let desk: Awaited<ReturnType<House['join']>>
  const stream = 'case:bramble'
  beforeAll(async () => {
    house = await House.open({ clock })
    desk = await house.join('dora', 'surgeon')
    const row = { kind: 'owner', name: 'Olive Owner', practice: null, phone: null, email: null, address: [] }
    await desk.browser.act('put-row', { register: 'contact', id: 'contact-1', body: row })
    const sent = [desk.make({ stream, kind: 'identity' }), desk.make({ stream, kind: 'household' })]
    await desk.browser.send([...sent, desk.make({ stream, kind: 'ear-findings' })], house.clinic)
  })
  afterAll(() => house?.close())

  const make = async (use = 'private'): Promise<{ path: string }> =>
    (await desk.browser.act('make-owner-link', { stream, contact: 'contact-1', use })).body
  const get = (address: string) => fetch(`${house.serving.url}${address}`, { redirect: 'manual' })
  const titleOf = async (address: string) => /<h1>(.*?)<\/h1>/.exec(await (await get(address)).text())?.[1]
  const goHome = () => desk.browser.send([desk.make({ stream, kind: 'discharge', at: clock.now() })], house.clinic)
  let [old, path, room] = ['', '', '']

  it('leads to the one page of the choice before, and to the page for home from that day on', async () => {
    old = (await make()).path
    clock.pass({ seconds: 61 * 86_400 })
    path = (await make()).path
    expect([await titleOf(path), (await get(`${path}/home`)).status]).toEqual(['Bramble: what can be done', 404])
    expect(await (await get(path)).text()).not.toContain('class="screen pages"')
    await goHome()
    const answer = await get(path)
    expect([answer.status, answer.headers.get('location')]).toEqual([302, `${path}/home`])
    expect(await titleOf(`${path}/home`)).toBe('At home with Bramble')
    expect(await titleOf(`${path}/before`)).toBe('Bramble: what can be done')
    const page = await (await get(`${path}/home`)).text()
    expect(page).toContain('Phone us now if you see any of these')
    expect(page).toMatch(/<a href="before">.*<a href="leaflet.pdf">/s)
    expect(page).not.toContain(path.slice(3))
    expect(await (await get(`${path}/home?language=es`)).text()).toMatch(/<html lang="es">.*En casa con Bramble/s)
  })

  it('gives the leaflet as a file', async () => {
    const answer = await get(`${path}/leaflet.pdf`)
    expect([answer.status, answer.headers.get('content-type')]).toEqual([200, 'application/pdf'])
    expect(
      Buffer.from(await answer.arrayBuffer())
        .subarray(0, 5)
        .toString(),
    ).toBe('%PDF-')
  })

  it('opens for fourteen months after that day; one that had run out is not woken, one of the room still ends', async () => {
    expect((await get(old)).status).toBe(404)
    room = (await make('in-room')).path
    expect((await get(`${room}/home`)).status).toBe(200)
    const { links } = (await desk.browser.act('list-owner-links', { stream })).body
    const until = new Date(clock.now())
    until.setUTCMonth(until.getUTCMonth() + 14)
    const atHome = links.find(({ use, state }: { use: string; state: string }) => use === 'private' && state === 'open')
    expect(atHome.expiresAt.slice(0, 10)).toBe(until.toISOString().slice(0, 10))
    const { expiresAt } = (await desk.browser.act('make-owner-link', { stream, contact: 'contact-1', use: 'private' }))
      .body
    expect(expiresAt).toBe(atHome.expiresAt)
    clock.pass({ seconds: 400 * 86_400 })
    expect([(await get(`${path}/home`)).status, (await get(room)).status]).toEqual([200, 404])
    clock.pass({ seconds: 31 * 86_400 })
    expect((await get(`${path}/home`)).status).toBe(404)
  })
})
