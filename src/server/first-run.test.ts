import { afterEach, describe, expect, it } from 'vitest'
import { project } from '#actions/journal/project.ts'
import type { Json } from '#core/journal/canonical.ts'
import { sealAll } from '#core/journal/chain.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { projectForTests } from '#storage/projector-for-tests.ts'
import { openLockedFolder } from '#storage/sqlite/open.ts'
import { clinicForTests, House } from './house-for-tests.ts'

describe('the first run', () => {
  let house: House
  afterEach(() => house?.close())

  it('opens the clinic once with the code, signs its first person in, and then there is no code any more', async () => {
    house = await House.closed()
    const browser = house.browser('office')
    expect((await browser.act('read-front-door', {})).body).toEqual({
      state: 'first-run',
      clinicName: null,
      invented: false,
      connection: 'this-machine',
      version: '0.1.0',
    })
    expect(house.serving.firstCode).toMatch(/^[A-HJ-NP-Z2-9]{4}(-[A-HJ-NP-Z2-9]{4}){2}$/)
    const { status, body, headers } = await browser.act('open-clinic', house.opening())
    expect(status).toBe(200)
    expect(body.people).toEqual([{ id: body.active, name: 'Mara Manager', role: 'manager', keeper: true, pin: null }])
    expect(body).toMatchObject({ clinic: { row: clinicForTests }, invented: false, device: { id: 'office' } })
    expect(headers.get('set-cookie')).toMatch(
      /^quiet-ear-session=[0-9a-f]{64}; Path=\/; Expires=[^;]+; HttpOnly; SameSite=Strict$/,
    )
    expect((await browser.act('who-am-i', {})).body.active).toBe(body.active)
    expect((await browser.act('read-front-door', {})).body).toMatchObject({
      state: 'sign-in',
      clinicName: 'Invented clinic',
    })
    const again = await house.browser('other').act('open-clinic', { ...house.opening(), login: 'eve' })
    expect([again.status, again.error.code]).toEqual([409, 'already-open'])
    await house.serving.close()
    await house.start()
    expect(house.serving.firstCode).toBeNull()
  })

  it('refuses a wrong code, and takes the right one however it is typed', async () => {
    house = await House.closed()
    const browser = house.browser('office')
    for (const code of ['AAAA-AAAA-AAAA', 'x', house.serving.firstCode?.slice(0, -1) ?? '']) {
      const { status, error } = await browser.act('open-clinic', { ...house.opening(), code })
      expect([status, error.code, error.path]).toEqual([403, 'wrong-code', 'code'])
    }
    expect((await browser.act('read-front-door', {})).body.state).toBe('first-run')
    expect(await house.serving.store.clinics()).toEqual([])
    const typed = ` ${house.serving.firstCode?.toLowerCase().replaceAll('-', ' ')}`
    expect((await browser.act('open-clinic', { ...house.opening(), code: typed })).status).toBe(200)
  })

  it('makes one clinic when two open it at once', async () => {
    house = await House.closed()
    const tries = await Promise.all(
      ['one', 'two', 'three'].map((login) => house.browser(login).act('open-clinic', { ...house.opening(), login })),
    )
    expect(tries.filter(({ status }) => status === 200)).toHaveLength(1)
    expect(await house.serving.store.clinics()).toHaveLength(1)
    expect(await house.serving.store.current((await house.serving.store.clinics())[0] ?? '', 'person')).toHaveLength(1)
  })

  it('refuses a short password, one that is the login, and an unknown role, naming the field', async () => {
    house = await House.closed()
    const browser = house.browser('office')
    const wrong = [
      [{ password: 'short' }, 'password'],
      [{ login: 'Mara Manager', password: 'mara manager' }, 'password'],
      [{ person: { name: 'Mara', role: 'owner', letters: null } }, 'person.role'],
      [{ clinic: { ...clinicForTests, zone: 'Mars' } }, 'clinic.zone'],
      [{ clinic: null }, 'clinic'],
    ] as const
    for (const [change, path] of wrong) {
      const { status, error } = await browser.act('open-clinic', { ...house.opening(), ...change })
      expect([status, error.path]).toEqual([400, path])
    }
    expect(await house.serving.store.clinics()).toEqual([])
  })

  it('opens the invented practice with all its cases, marked as invented, and never mixes it with another', async () => {
    house = await House.closed({ project })
    const browser = house.browser('office')
    const opening = { ...house.opening(), choice: 'invented-practice', clinic: null }
    const { body } = await browser.act('open-clinic', opening)
    expect(body).toMatchObject({ invented: true, clinic: { id: 'larkwater' }, people: [{ name: 'Mara Manager' }] })
    const cases = await house.serving.store.cases('larkwater')
    expect(cases.map(({ name }) => name).sort()).toEqual([
      'Barley',
      'Hazel',
      'Juniper',
      'Moss',
      'Rowan',
      'Sorrel',
      'Tansy',
      'Teasel',
    ])
    const people = (await browser.act('list-people', {})).body.people as { name: string }[]
    expect(people.map(({ name }) => name)).toContain('Imke Holm')
    expect((await browser.act('read-front-door', {})).body.invented).toBe(true)
  })

  it('opens a clinic that was imported before anybody had an account, under the name it has', async () => {
    const made = await House.closed()
    await made.serving.close()
    house = made
    // A name as one device writes it, and as another one does: with accents of their own.
    const clinic = 'cliniqu\u00e9'
    const store = await openLockedFolder(house.folder, { project: projectForTests })
    const entries = sealAll([entryMaker({ clinic })()], () => '2026-03-01T09:00:00.000Z')
    const rows = [
      { register: 'clinic', id: clinic, revision: 1, body: clinicForTests as Record<string, Json>, by: 'x', at: 'x' },
    ] as const
    await store.restore(clinic, each(entries), rows)
    await store.close()
    await house.start()
    const browser = house.browser('office')
    expect((await browser.act('read-front-door', {})).body).toMatchObject({
      state: 'first-run',
      clinicName: 'Invented clinic',
    })
    for (const choice of ['empty-clinic', 'invented-practice']) {
      expect((await browser.act('open-clinic', { ...house.opening(), choice })).error.code).toBe('clinic-there')
    }
    const person = { name: 'Sven', role: 'surgeon', letters: null }
    const opened = await browser.act('open-clinic', { ...house.opening(), choice: 'this-clinic', clinic: null, person })
    expect(opened.body.clinic.id).toBe(clinic)
    const make = entryMaker(
      { clinic: 'cliniqu\u0065\u0301', author: { kind: 'person', person: opened.body.active } },
      2,
    )
    expect((await browser.send([make()], 'cliniqu\u0065\u0301')).status).toBe(200)
    expect(await house.serving.store.stream(clinic, 'case:0001')).toHaveLength(2)
    // Whoever opened the clinic looks after its people, whatever else they are here.
    const hired = { id: null, body: { name: 'Nora', role: 'nurse', letters: null } }
    expect((await browser.act('put-person', hired)).status).toBe(200)
  })
})

async function* each<Item>(items: readonly Item[]): AsyncGenerator<Item> {
  yield* items
}
