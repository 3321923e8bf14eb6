import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { readCase } from '#actions/journal/read-case.ts'
import { readLists } from '#actions/journal/read-lists.ts'
import type { ReadLine } from '#actions/people/accounts.ts'
import { type Browser, House } from './house-for-tests.ts'

describe('reading the journal', () => {
  let house: House
  let nurse: Awaited<ReturnType<House['join']>>
  let desk: Awaited<ReturnType<House['join']>>
  beforeAll(async () => {
    house = await House.open()
    nurse = await house.join('nora', 'nurse')
    desk = await house.join('dora', 'desk')
  })
  afterAll(() => house?.close())

  const read = async (stream: string, after: number | null = null, browser: Browser = nurse.browser) =>
    browser.act('read-case', { stream, after })
  const ids = ({ body }: { body: { entries: { header: { id: string } }[] } }) =>
    body.entries.map(({ header }) => header.id)
  const contact = (kind: string, name: string) => ({
    kind,
    name,
    practice: null,
    phone: '0100',
    email: null,
    address: [],
  })

  it('gives a case whole, then only what is new, with the clinic around it', async () => {
    const { browser, make } = nurse
    const sent = [make({ stream: 'case:a' }), make({ stream: 'case:a' }), make({ stream: 'case:b' })]
    const { body } = await browser.send(sent, house.clinic)
    const whole = await read('case:a')
    expect(whole.status).toBe(200)
    expect(readCase.output.safeParse(whole.body).error).toBeUndefined()
    expect(ids(whole)).toEqual([sent[0]?.id, sent[1]?.id])
    expect(whole.body.rows.map(({ register }: { register: string }) => register)).toContain('clinic')
    expect(whole.body.house).toEqual([])
    expect(ids(await read('case:a', body.entries[0].envelope.position))).toEqual([sent[1]?.id])
    expect(ids(await read('case:a', 9_999))).toEqual([])
    expect(ids(await read('case:nobody-yet'))).toEqual([])
  })

  it('gives what a merge joins to it, and what was kept aside of either', async () => {
    const { browser, make } = nurse
    const [one, two] = [make({ stream: 'case:m1' }), make({ stream: 'case:m2' })]
    const body = {
      otherStream: 'case:m2',
      otherAnimal: 'animal-2',
      matchedOn: ['chip' as const],
      secondPerson: desk.person,
    }
    const merge = make({ stream: 'case:m1', kind: 'merge', body })
    await browser.send([one, two, merge], house.clinic)
    expect(ids(await read('case:m2'))).toEqual([one.id, two.id, merge.id])
    await browser.send([{ ...one, body: { text: 'Other bytes.' } }], house.clinic)
    expect((await read('case:m2')).body.keptAside.map(({ id }: { id: string }) => id)).toEqual([one.id])
  })

  it('hands a case its own owners and everybody’s vets, and no other owner', async () => {
    const { browser, person } = desk
    const make = house.maker(person, 1)
    const put = (id: string, body: object) => browser.act('put-row', { register: 'contact', id, body })
    await put('contact-vet', contact('vet', 'Elin'))
    await put('contact-ours', contact('owner', 'Ours'))
    await put('contact-theirs', contact('owner', 'Theirs'))
    const home = {
      contacts: [{ contact: 'contact-ours', roles: ['owner' as const], mayConsent: true }],
      language: 'en',
      otherAnimals: null,
    }
    const subject = { kind: 'household' as const, household: 'household-1' }
    const sentHome = await browser.send(
      [make({ stream: 'case:h', kind: 'household', subject, body: home })],
      house.clinic,
    )
    expect(sentHome.body).toMatchObject({ entries: [{ outcome: 'accepted' }] })
    const rows: { register: string; id: string }[] = (await read('case:h')).body.rows
    const contacts = rows.filter(({ register }) => register === 'contact').map(({ id }) => id)
    expect(contacts).toEqual(['contact-ours', 'contact-vet'])
  })

  it('writes down who read which case where, once a minute, and every case that was read with it', async () => {
    const { browser, make } = nurse
    const body = {
      otherStream: 'case:l2',
      otherAnimal: 'animal-2',
      matchedOn: ['chip' as const],
      secondPerson: desk.person,
    }
    const entries = [make({ stream: 'case:l1', kind: 'merge', body }), make({ stream: 'case:l2' })]
    await browser.send(entries, house.clinic)
    await read('case:l1')
    await read('case:l1')
    for (const stream of ['case:l1', 'case:l2']) {
      const { lines } = (await house.manager.act('read-log', { stream })).body as { lines: ReadLine[] }
      const minutes = new Set(lines.map((line) => JSON.stringify(line)))
      expect(lines.length).toBe(minutes.size)
      expect(lines[0]).toMatchObject({ stream, person: nurse.person, device: browser.id })
      expect(lines[0]?.at ?? '').toMatch(/^\d{4}-\d\d-\d\dT\d\d:\d\dZ$/)
    }
  })

  it('gives the lists, whole and what changed, in the shape they are described in', async () => {
    const whole = await nurse.browser.act('read-lists', {})
    expect(readLists.output.safeParse(whole.body).error).toBeUndefined()
    expect(whole.headers.get('content-type')).toBe('application/json')
    expect(whole.body.changed).toBeNull()
    expect(whole.body.owed.length).toBeGreaterThan(0)
    expect(whole.body.owed[0]).toMatchObject({ name: 'Bramble', species: 'dog' })
    const { make } = nurse
    await nurse.browser.send([make({ stream: 'case:a', kind: 'weight' })], house.clinic)
    const news = await nurse.browser.act('read-lists', { since: whole.body.version })
    expect(news.body.changed).toEqual(['case:a'])
    expect(news.body.cases.map(({ stream }: { stream: string }) => stream)).toEqual(['case:a'])
  })

  it('packs long lists for the air, and gives the same', async () => {
    const { make, browser } = nurse
    const many = Array.from({ length: 300 }, (_, at) => make({ stream: `case:long-${at}` }))
    await browser.send(many, house.clinic)
    const plain = await browser.act('read-lists', {}, { 'accept-encoding': 'identity' })
    const packed = await browser.act('read-lists', {}, { 'accept-encoding': 'gzip' })
    expect([plain, packed].map(({ headers }) => headers.get('content-encoding'))).toEqual([null, 'gzip'])
    expect({ ...packed.body, asOf: '' }).toEqual({ ...plain.body, asOf: '' })
  })

  it('is for people who are signed in, of streams of cases only', async () => {
    const stranger = house.browser('stranger')
    expect((await read('case:a', null, stranger)).status).toBe(401)
    expect((await stranger.act('read-lists', {})).status).toBe(401)
    expect((await read('register:contact')).error).toMatchObject({ path: 'stream' })
    expect((await nurse.browser.act('read-lists', { since: -1 })).status).toBe(400)
  })
})

describe('writing the registers', () => {
  let house: House
  const people = {} as Record<'nurse' | 'desk' | 'read-only', Browser>
  beforeAll(async () => {
    house = await House.open()
    for (const role of ['nurse', 'desk', 'read-only'] as const) people[role] = (await house.join(role, role)).browser
  })
  afterAll(() => house?.close())

  const contact = { kind: 'owner', name: 'Ada', practice: null, phone: null, email: null, address: [] }
  const price = { label: 'TECA-LBO', low: '1000', high: '2000', currency: 'GBP' }

  it('keeps every revision, and lets each role write what is theirs', async () => {
    const put = (browser: Browser, register: string, id: string, body: unknown) =>
      browser.act('put-row', { register, id, body })
    expect((await put(people.nurse, 'contact', 'c1', contact)).body).toEqual({ revision: 1 })
    expect((await put(people.desk, 'contact', 'c1', { ...contact, name: 'Ada Alder' })).body).toEqual({ revision: 2 })
    expect((await put(people.desk, 'price', 'teca', price)).status).toBe(200)
    const refusals = [
      await put(people['read-only'], 'contact', 'c2', contact),
      await put(people.nurse, 'price', 'teca', price),
      await put(people.nurse, 'closed-day', '2026-12-25', { day: '2026-12-25', because: 'Christmas' }),
      await put(people.desk, 'contact', 'c1', null),
    ]
    expect(refusals.map(({ status }) => status)).toEqual([403, 403, 403, 403])
    const rows = await house.serving.store.registers(house.clinic)
    expect(rows.filter(({ id }) => id === 'c1').map(({ body }) => body?.name)).toEqual(['Ada', 'Ada Alder'])
    expect((await put(house.manager, 'contact', 'c1', null)).body).toEqual({ revision: 3 })
  })

  it('takes nobody’s newer number away with what a device sends late, and takes the same once more', async () => {
    const put = (browser: Browser, phone: string, after: number | null) =>
      browser.act('put-row', { register: 'contact', id: 'c9', body: { ...contact, phone }, after })
    expect((await put(people.desk, '01632 960001', null)).body).toEqual({ revision: 1 })
    expect((await put(people.nurse, '01632 960002', 1)).body).toEqual({ revision: 2 })
    const late = await put(people.desk, '01632 960003', 1)
    expect(late).toMatchObject({ status: 409, error: { code: 'changed-meanwhile', path: 'after' } })
    expect((await put(people.nurse, '01632 960002', 1)).body).toEqual({ revision: 2 })
    expect((await put(people.desk, '01632 960002', 1)).status).toBe(409)
    expect((await put(people.desk, '01632 960003', null)).status).toBe(409)
    expect((await put(people.desk, '01632 960003', 2)).body).toEqual({ revision: 3 })
  })

  it('refuses what is not a row of that register, naming the field', async () => {
    const wrong = async (register: string, id: string, body: unknown) =>
      (await people.desk.act('put-row', { register, id, body })).error
    expect(await wrong('contact', 'c3', { ...contact, kind: 'cousin' })).toMatchObject({ path: 'body.kind' })
    expect(await wrong('price', 'x', { ...price, currency: 'pounds' })).toMatchObject({ path: 'body.currency' })
    expect(await wrong('closed-day', 'xmas', { day: '2026-12-25', because: 'x' })).toMatchObject({ path: 'id' })
    expect(await wrong('person', 'p', {})).toMatchObject({ path: 'register' })
    expect(await wrong('clinic', 'another', { name: 'x' })).toMatchObject({ path: 'id' })
  })
})
