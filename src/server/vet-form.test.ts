import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { project } from '#actions/journal/project.ts'
import { listVetLinks } from '#actions/vet/list-vet-links.ts'
import { makeVetLink } from '#actions/vet/make-vet-link.ts'
import { identity } from '#core/journal/kinds/identity.ts'
import { operationSummary } from '#core/journal/kinds/operation-summary.ts'
import { dataFileName } from '#storage/sqlite/open.ts'
import { ClockForTests } from './clock-for-tests.ts'
import { House } from './house-for-tests.ts'

const day = 86_400

describe('the short form of a referring practice', () => {
  const clock = new ClockForTests()
  let house: House
  let nurse: Awaited<ReturnType<House['join']>>
  const stream = 'case:bramble'
  const operated = clock.now()
  beforeAll(async () => {
    house = await House.open({ clock, project })
    nurse = await house.join('nora', 'nurse')
    const surgeon = await house.join('sela', 'surgeon')
    const row = { phone: null, email: null, address: [] }
    const contact = (id: string, kind: string, name: string, practice: string | null = null) =>
      nurse.browser.act('put-row', { register: 'contact', id, body: { ...row, kind, name, practice } })
    await contact('contact-1', 'owner', 'Olive Owner')
    await contact('contact-2', 'vet', 'Val Vet', 'Hill Practice')
    await contact('contact-3', 'vet', 'Another Vet')
    const at = (minutes: number) => new Date(Date.parse(operated) + minutes * 60_000).toISOString()
    const named = { ...identity.example, referringVet: 'contact-2' }
    const sent = [
      nurse.make({ stream, kind: 'identity', body: named, at: at(0) }),
      nurse.make({ stream, kind: 'household', at: at(0) }),
    ]
    expect((await nurse.browser.send(sent, house.clinic)).status).toBe(200)
    const moment = (at: string) => ({ at, zone: 'Europe/London', precision: 'minute', by: 'person' }) as const
    const body = { ...operationSummary.example, incisionAt: moment(at(1)), closedAt: moment(at(60)) }
    const summary = house.maker(surgeon.person, 1)({ stream, kind: 'operation-summary', at: at(61), body })
    const kept = (await surgeon.browser.send([summary], house.clinic)).body
    expect(kept.entries).toMatchObject([{ outcome: 'accepted' }])
    clock.pass({ seconds: 12 * day })
  })
  afterAll(() => house?.close())

  const make = (about: Record<string, unknown> = {}, browser = nurse.browser) =>
    browser.act('make-vet-link', {
      stream,
      contact: 'contact-2',
      ask: { kind: 'stretch', stretch: 'weeks-6' },
      ...about,
    })
  const list = async () => (await nurse.browser.act('list-vet-links', { stream })).body
  const get = (address: string, init: RequestInit = {}) =>
    fetch(`${house.serving.url}${address}`, { redirect: 'manual', ...init })
  const send = (address: string, fields: Record<string, string>, headers: Record<string, string> = {}) =>
    get(address, { method: 'POST', body: new URLSearchParams(fields), headers: { origin: 'null', ...headers } })
  const entries = async (kind: string) =>
    (await nurse.browser.act('read-case', { stream, after: null })).body.entries.filter(
      ({ header }: { header: { kind: string } }) => header.kind === kind,
    )
  const today = () => clock.now().slice(0, 10)
  const answer = () => ({ by: 'Wren Hollis', day: today(), 'LEFT.wound': 'closed', 'LEFT.sutures': 'out' })
  const lookOwed = async () => {
    const { owed } = (await nurse.browser.act('read-lists', { since: null })).body
    return owed.filter((one: { stream: string }) => one.stream === stream).map(({ id }: { id: string }) => id)
  }

  it('has an address told once, of which only the hash is kept', async () => {
    const { status, body } = await make()
    expect(status).toBe(200)
    expect(makeVetLink.output.safeParse(body).error).toBeUndefined()
    expect(body.path).toMatch(/^\/v\/[\w-]{43}$/)
    const token = body.path.slice(3)
    const listed = await list()
    expect(listVetLinks.output.safeParse(listed).error).toBeUndefined()
    expect(JSON.stringify(listed)).not.toContain(token)
    await get(body.path)
    for (const name of [dataFileName, `${dataFileName}-wal`]) {
      expect(readFileSync(join(house.folder, name), 'latin1')).not.toContain(token)
    }
    expect(house.log.some((line) => line.startsWith('GET /v/… 200'))).toBe(true)
    expect(house.log.join('\n')).not.toContain(token)
    // Six weeks on the calendar; a clock change may lie between.
    const lasts = (Date.parse(body.expiresAt) - Date.parse(clock.now())) / 3_600_000
    expect(Math.abs(lasts - 6 * 7 * 24)).toBeLessThanOrEqual(1)
  })

  it('is made for a practice of this animal, by staff, for a look that is owed', async () => {
    expect((await list()).vets).toEqual([{ contact: 'contact-2', name: 'Val Vet' }])
    expect((await make({ contact: 'contact-1' })).error.code).toBe('not-a-vet-here')
    expect((await make({ contact: 'contact-3' })).error.code).toBe('not-a-vet-here')
    expect((await make({ stream: 'case:nobody' })).error.code).toBe('no-such-case')
    expect((await make({ ask: { kind: 'look', owed: 'first-call:operation-1' } })).error.code).toBe('not-to-be-asked')
    expect((await make({}, house.browser('stranger'))).status).toBe(401)
    const reader = await house.join('rita', 'read-only')
    expect((await make({}, reader.browser)).status).toBe(403)
  })

  it('shows what the look needs and nothing else of the record', async () => {
    const { body } = await make({ ask: { kind: 'look', owed: 'suture-check:operation-1' } })
    const shown = await get(body.path)
    const page = await shown.text()
    expect(shown.status).toBe(200)
    for (const said of ['Bramble, dog', 'Hill Practice', 'LEFT ear', 'day 12 after the operation', 'Telephone'])
      expect(page).toContain(said)
    for (const kept of ['Olive Owner', 'Springer', '000000000000001', body.path.slice(3), '<script'])
      expect(page).not.toContain(kept)
    const header = (name: string) => shown.headers.get(name)
    expect([header('cache-control'), header('referrer-policy'), header('set-cookie')]).toEqual([
      'no-store',
      'no-referrer',
      null,
    ])
    expect(header('x-robots-tag')).toContain('noindex')
  })

  it('keeps what was seen as a look by the referring vet, settles what was owed, and asks the surgeon to read it', async () => {
    expect(await lookOwed()).toContain('suture-check:operation-1')
    const { body } = await make({ ask: { kind: 'look', owed: 'suture-check:operation-1' } })
    const kept = await send(body.path, answer())
    expect([kept.status, kept.headers.get('location')]).toEqual([303, '?sent=kept#sent'])
    const [look, ...others] = await entries('check')
    expect(others).toEqual([])
    expect(look.header.author).toEqual({ kind: 'referring-vet', contact: 'contact-2' })
    expect(look.header.subject).toMatchObject({ kind: 'ear', side: 'LEFT' })
    expect(look.body).toMatchObject({ seenBy: 'referring-vet', wound: 'closed', sutures: 'out', blink: 'not-assessed' })
    const [said] = await entries('vet-answer')
    expect(said.body).toEqual({
      asked: 'stitches',
      examinedBy: 'Wren Hollis',
      looks: [look.header.id],
      saysDied: false,
      text: null,
    })
    const owed = await lookOwed()
    expect(owed).not.toContain('suture-check:operation-1')
    expect(owed).toContain(`vet-answer-to-read:${said.header.id}`)
    expect(await (await get(`${body.path}?sent=kept`)).text()).toContain('Thank you. We have it')

    // The same send once more, later and from two windows at once, is the same answer; another day is a second look.
    clock.pass({ seconds: 61 })
    const same = await Promise.all([send(body.path, answer()), send(body.path, answer())])
    expect(same.map(({ status }) => status)).toEqual([303, 303])
    expect([(await entries('check')).length, (await entries('vet-answer')).length]).toEqual([1, 1])
    clock.pass({ seconds: 5 * day })
    await Promise.all([send(body.path, answer()), send(body.path, answer())])
    expect([(await entries('check')).length, (await entries('vet-answer')).length]).toEqual([2, 2])
    expect((await nurse.browser.act('read-lists', { since: null })).body.owed).not.toContainEqual(
      expect.objectContaining({ id: expect.stringContaining('kept-aside') }),
    )
  })

  it('keeps what was typed when something is missing, says what, and sends nothing', async () => {
    const { body } = await make()
    const before = (await entries('check')).length
    const refused = await send(body.path, { by: '', day: today(), 'LEFT.blink': 'absent', text: 'Weeps <a little>' })
    const page = await refused.text()
    expect(refused.status).toBe(422)
    expect(page).toContain('Nothing was sent yet')
    expect(page).toContain('Who examined: type your name.')
    expect(page).toContain(`value="${today()}"`)
    expect(page).toContain('<option value="absent" selected>')
    expect(page).toContain('Weeps &#60;a little&#62;')
    expect((await send(body.path, answer(), { origin: 'https://elsewhere.example' })).status).toBe(403)
    expect((await send(body.path, { ...answer(), text: 'x'.repeat(70_000) })).status).toBe(413)
    expect(await entries('check')).toHaveLength(before)
  })

  it('takes ten answers in a day and then asks for the telephone', async () => {
    const { body } = await make()
    const send1 = (n: number) => send(body.path, { ...answer(), text: `Look ${n}` })
    for (let n = 0; n < 10; n += 1) expect((await send1(n)).status).toBe(303)
    const more = await send1(10)
    expect([more.status, (await more.text()).includes('please phone us')]).toEqual([429, true])
    clock.pass({ seconds: day })
    expect((await send1(11)).status).toBe(303)
  })

  it('tells a death without ending anything: a person of the house confirms it', async () => {
    const { body } = await make()
    const before = (await lookOwed()).length
    expect((await send(body.path, { by: 'Wren Hollis', died: 'yes' })).status).toBe(303)
    expect(await entries('death')).toEqual([])
    const owed = await lookOwed()
    expect(owed.some((id: string) => id.startsWith('vet-death-to-confirm:'))).toBe(true)
    expect(owed.length).toBeGreaterThan(before)
    expect((await get(body.path)).status).toBe(200)
  })

  it('is closed by the same page when it is wrong, ended, run out, or the practice is another one', async () => {
    const closed = async (address: string) => {
      const shown = await get(address)
      const page = await shown.text()
      return [shown.status, page.includes('This page is closed'), page.includes('Bramble')]
    }
    for (const address of ['/v/', '/v/short', `/v/${'A'.repeat(43)}`, '/v/..%2f'])
      expect([address, await closed(address)]).toEqual([address, [404, true, false]])
    const one = (await make()).body
    expect((await nurse.browser.act('revoke-vet-link', { link: one.id })).status).toBe(200)
    expect(await closed(one.path)).toEqual([404, true, false])
    expect((await nurse.browser.act('revoke-vet-link', { link: 'none' })).error.code).toBe('no-such-link')
    const two = (await make()).body
    clock.pass({ seconds: 43 * day })
    expect(await closed(two.path)).toEqual([404, true, false])
    const three = (await make()).body
    expect((await get(three.path)).status).toBe(200)
    const [first] = await entries('identity')
    const moved = { ...identity.example, referringVet: 'contact-3' }
    const supersedes = [first.header.id]
    const corrected = nurse.make({ stream, kind: 'identity', body: moved, supersedes, reason: 'They moved.' })
    await nurse.browser.send([corrected], house.clinic)
    expect(await closed(three.path)).toEqual([404, true, false])
    const states = new Set((await list()).links.map(({ state }: { state: string }) => state))
    expect(states).toEqual(new Set(['ended', 'run-out', 'vet-gone']))
  })

  it('opens nothing else of the clinic, is slowed down for strangers, and closed for ever by a death', async () => {
    const { path } = (await make({ contact: 'contact-3' })).body
    const cookie = `quiet-ear-session=${path.slice(3)}`
    const asked = await get('/api/actions/read-case', {
      method: 'POST',
      headers: { 'content-type': 'application/json', cookie },
      body: JSON.stringify({ stream, after: null }),
    })
    expect(asked.status).toBe(401)
    let last = 0
    for (let n = 0; n < 30; n += 1) last = (await get(`/v/${String(n).padStart(43, 'D')}`)).status
    expect(last).toBe(429)
    expect((await get(path)).status).toBe(200)
    const { lines } = (await house.manager.act('read-log', { stream })).body
    expect(lines).toContainEqual(expect.objectContaining({ person: 'contact-3', owner: 'Another Vet' }))
    await nurse.browser.send([nurse.make({ stream, kind: 'death' })], house.clinic)
    clock.pass({ seconds: 120 })
    expect((await get(path)).status).toBe(404)
    expect((await make({ contact: 'contact-3' })).error.code).toBe('animal-died')
  })
})
