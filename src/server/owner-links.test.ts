import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { listOwnerLinks } from '#actions/owner/list-owner-links.ts'
import { makeOwnerLink } from '#actions/owner/make-owner-link.ts'
import { dataFileName } from '#storage/sqlite/open.ts'
import { ClockForTests } from './clock-for-tests.ts'
import { House } from './house-for-tests.ts'

describe('private links for owners', () => {
  const clock = new ClockForTests()
  let house: House
  let desk: Awaited<ReturnType<House['join']>>
  const stream = 'case:bramble'
  beforeAll(async () => {
    house = await House.open({ clock })
    desk = await house.join('dora', 'desk')
    const row = { practice: null, phone: null, email: null, address: [] }
    const contact = (id: string, kind: string, name: string) =>
      desk.browser.act('put-row', { register: 'contact', id, body: { ...row, kind, name } })
    await contact('contact-1', 'owner', 'Olive Owner')
    await contact('contact-2', 'owner', 'Somebody Else')
    await contact('contact-3', 'vet', 'Val Vet')
    const sent = [desk.make({ stream, kind: 'identity' }), desk.make({ stream, kind: 'household' })]
    expect((await desk.browser.send(sent, house.clinic)).status).toBe(200)
  })
  afterAll(() => house?.close())

  const make = (about: Record<string, unknown> = {}, browser = desk.browser) =>
    browser.act('make-owner-link', { stream, contact: 'contact-1', use: 'private', ...about })
  const list = async (browser = desk.browser) => (await browser.act('list-owner-links', { stream })).body

  it('are told once, 32 bytes of chance, and nowhere kept as they are', async () => {
    const { status, body } = await make()
    expect(status).toBe(200)
    expect(makeOwnerLink.output.safeParse(body).error).toBeUndefined()
    // 43 letters of base64url hold 32 bytes (RFC 4648, section 5).
    expect(body.path).toMatch(/^\/o\/[\w-]{43}$/)
    const token = body.path.slice(3)
    const answer = await list()
    expect(listOwnerLinks.output.safeParse(answer).error).toBeUndefined()
    expect(JSON.stringify(answer)).not.toContain(token)
    for (const name of [dataFileName, `${dataFileName}-wal`]) {
      expect(readFileSync(join(house.folder, name), 'latin1')).not.toContain(token)
    }
    expect(house.log.join('\n')).not.toContain(token)
    expect((await make()).body.path).not.toBe(body.path)
  })

  it('last sixty days, and in the room two hours, and say by whom they were made', async () => {
    const now = Date.parse(clock.now())
    const { body } = await make({ use: 'in-room' })
    expect(Date.parse(body.expiresAt) - now).toBe(2 * 3_600_000)
    const long = await make()
    expect(Date.parse(long.body.expiresAt) - now).toBe(60 * 86_400_000)
    const { links } = await list()
    const made = { contact: 'contact-1', use: 'in-room', state: 'open', madeBy: desk.person, lastOpenedAt: null }
    expect(links.find(({ id }: { id: string }) => id === body.id)).toMatchObject(made)
    clock.pass({ seconds: 2 * 3_600 })
    const states = new Map((await list()).links.map((link: { id: string; state: string }) => [link.id, link.state]))
    expect([states.get(body.id), states.get(long.body.id)]).toEqual(['run-out', 'open'])
  })

  it('are for an owner among the people of the animal, and made by nobody who is not signed in', async () => {
    expect((await list()).owners).toEqual([{ contact: 'contact-1', name: 'Olive Owner' }])
    expect((await make({ contact: 'contact-2' })).error.code).toBe('not-an-owner-here')
    expect((await make({ contact: 'contact-3' })).error.code).toBe('not-an-owner-here')
    expect((await make({ stream: 'case:nobody' })).error.code).toBe('no-such-case')
    expect((await make({}, house.browser('stranger'))).status).toBe(401)
    const reader = await house.join('rita', 'read-only')
    expect((await make({}, reader.browser)).status).toBe(403)
  })

  it('are ended at once by anybody of the staff, with name and time, and stay on the list', async () => {
    const { id } = (await make()).body
    const nurse = await house.join('nora', 'nurse')
    expect((await nurse.browser.act('revoke-owner-link', { link: id })).status).toBe(200)
    const at = clock.now()
    clock.pass({ seconds: 60 })
    await desk.browser.act('revoke-owner-link', { link: id })
    const ended = (await list()).links.find((link: { id: string }) => link.id === id)
    expect(ended).toMatchObject({ state: 'ended', revokedBy: nurse.person, revokedAt: at })
    expect((await desk.browser.act('revoke-owner-link', { link: 'owner-link-none' })).error.code).toBe('no-such-link')
  })

  it('are closed to a person who no longer belongs to the animal, and for ever when it has died', async () => {
    const moved = {
      contacts: [{ contact: 'contact-2', roles: ['owner' as const], mayConsent: true }],
      language: 'en',
      otherAnimals: null,
    }
    const first = (await desk.browser.act('read-case', { stream, after: null })).body.entries.find(
      ({ header }: { header: { kind: string } }) => header.kind === 'household',
    )
    const supersedes = [first.header.id]
    const corrected = desk.make({ stream, kind: 'household', body: moved, supersedes, reason: 'They moved.' })
    await desk.browser.send([corrected], house.clinic)
    expect((await list()).links.map(({ state }: { state: string }) => state)).toContain('person-gone')
    expect((await list()).owners).toEqual([{ contact: 'contact-2', name: 'Somebody Else' }])
    const { id } = (await make({ contact: 'contact-2' })).body
    await desk.browser.send([desk.make({ stream, kind: 'death' })], house.clinic)
    const { links, owners } = await list()
    expect(links.find((link: { id: string }) => link.id === id).state).toBe('animal-died')
    expect(owners).toEqual([])
    expect((await make({ contact: 'contact-2' })).error.code).toBe('animal-died')
  })
})
