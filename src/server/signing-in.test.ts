import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { scrypt } from '@noble/hashes/scrypt.js'
import { bytesToHex, hexToBytes } from '@noble/hashes/utils.js'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { actions } from '#actions/index.ts'
import { ClockForTests } from './clock-for-tests.ts'
import { type Browser, House, passwordFor } from './house-for-tests.ts'

describe('signing in', () => {
  const clock = new ClockForTests()
  let house: House
  beforeAll(async () => {
    house = await House.open({ clock })
  })
  afterAll(() => house?.close())
  const who = (browser: Browser) => browser.act('who-am-i', {})

  it('turns a stranger away from every action but the front door, before reading what was sent', async () => {
    const open = actions.filter(({ may }) => may === 'anyone').map(({ name }) => name)
    expect(open).toEqual(['open-clinic', 'read-front-door', 'sign-in'])
    for (const { name, may } of actions) {
      if (may === 'anyone') continue
      const { status, error } = await house.browser('stranger').act(name, { nonsense: true })
      expect([name, status, error.code]).toEqual([name, 401, 'not-signed-in'])
    }
  })

  it('says the same of a wrong password, an unknown login and a closed account', async () => {
    const gone = await house.hire('gone', 'nurse')
    await house.manager.act('put-account', { person: gone, login: 'gone', password: null, active: false })
    const answers = [
      await house.browser('a').signIn('mara', 'not the password'),
      await house.browser('b').signIn('nobody', 'not the password'),
      await house.browser('c').signIn('gone'),
    ]
    for (const { status, body } of answers) {
      expect(status).toBe(401)
      expect(body).toEqual(answers[0]?.body)
    }
  })

  it('takes a login however it is typed, and a password in any Unicode form', async () => {
    const person = await house.hire('zoe', 'nurse')
    const password = 'caf\u00e9 \u00e0 la cr\u00e8me'
    await house.manager.act('put-account', { person, login: 'Zo\u00eb', password })
    const typed = house.browser('typed')
    expect((await typed.signIn('  ZO\u0045\u0308 ', password.normalize('NFD'))).status).toBe(200)
  })

  it('gives a new token each time: the one of before, a forged one and a cut one are worth nothing', async () => {
    const { browser } = await house.join('rita', 'nurse')
    const before = browser.cookie
    expect((await who(browser)).status).toBe(200)
    await browser.signIn('rita')
    expect(browser.cookie).not.toBe(before)
    const thief = house.browser('thief')
    const forged = ['', 'quiet-ear-session=', `quiet-ear-session=${'0'.repeat(64)}`, browser.cookie?.slice(0, -1)]
    for (const cookie of [before, ...forged]) {
      thief.cookie = cookie ?? ''
      expect([cookie, (await who(thief)).status]).toEqual([cookie, 401])
    }
    thief.cookie = browser.cookie
    expect((await who(thief)).status).toBe(200)
    await browser.act('sign-out', { everyone: true })
    expect((await who(thief)).status).toBe(401)
  })

  it('does not lend a planted session: whoever signs in with it gets another token', async () => {
    const planted = (await house.join('planter', 'nurse')).browser
    const victim = house.browser(planted.id)
    victim.cookie = planted.cookie
    await house.hire('victim', 'surgeon')
    await victim.signIn('victim')
    expect((await who(victim)).status).toBe(200)
    expect((await who(planted)).status).toBe(401)
  })

  it('keeps no token and no password in the data folder, and survives a restart', async () => {
    const { browser } = await house.join('kept', 'nurse')
    const token = browser.cookie?.split('=')[1] ?? 'none'
    const bytes = readdirSync(house.folder).map((name) => readFileSync(join(house.folder, name), 'latin1'))
    expect(bytes.join('')).not.toContain(token)
    expect(bytes.join('')).not.toContain(passwordFor('kept'))
    expect(bytes.join('')).toContain('$argon2id$v=19$m=65536,t=3,p=1$')
    await house.serving.close()
    await house.start()
    const again = house.browser(browser.id)
    again.cookie = browser.cookie
    house.manager = Object.assign(house.browser('office'), { cookie: house.manager.cookie })
    expect((await who(again)).body.people[0].name).toBe('Person kept')
    expect((await who(house.manager)).status).toBe(200)
  })

  it('ends a session after 90 days, and signing in again begins a new one', async () => {
    const { browser } = await house.join('ninety', 'nurse')
    const first = (await who(browser)).body.session
    clock.pass({ days: 89 })
    expect((await who(browser)).status).toBe(200)
    clock.pass({ days: 1 })
    expect((await who(browser)).status).toBe(401)
    expect((await browser.signIn('ninety')).body.session).not.toBe(first)
    await house.manager.signIn('mara')
  })

  describe('at a shared device', () => {
    let tablet: Browser
    const ids = new Map<string, string>()
    const id = (login: string) => ids.get(login) ?? ''
    beforeAll(async () => {
      tablet = house.browser('tablet')
      for (const [login, role] of [
        ['nina', 'nurse'],
        ['sol', 'surgeon'],
        ['away', 'nurse'],
      ] as const) {
        ids.set(login, await house.hire(login, role))
      }
      await tablet.signIn('nina')
      await tablet.signIn('sol')
    })

    it('keeps people side by side; whoever signed in last acts, until the device names another', async () => {
      const { body } = await who(tablet)
      expect(body.people.map(({ name }: { name: string }) => name).sort()).toEqual(['Person nina', 'Person sol'])
      expect(body.active).toBe(id('sol'))
      tablet.as = id('nina')
      const refused = await tablet.act('read-log', { stream: 'case:1' })
      expect([refused.status, refused.error.message]).toEqual([403, expect.stringContaining('nurse')])
      tablet.as = null
      expect((await tablet.act('read-log', { stream: 'case:1' })).status).toBe(200)
    })

    it('lets nobody act, or write in the name of somebody, who is not signed in there', async () => {
      tablet.as = id('away')
      const acting = await tablet.act('list-people', {})
      expect([acting.status, acting.error.code]).toEqual([403, 'not-enrolled'])
      // The device itself may still ask who is there, and somebody else may sign in.
      expect((await who(tablet)).status).toBe(200)
      expect((await tablet.act('read-front-door', {})).status).toBe(200)
      tablet.as = null
      const foreign = await tablet.send([house.maker(id('away'), 3)()], house.clinic)
      expect([foreign.status, foreign.error.code]).toEqual([403, 'other-author'])
      expect(foreign.error.path).toBe('entries[0].author.person')
      const both = [house.maker(id('sol'), 4)(), house.maker(id('nina'), 5)()]
      expect((await tablet.send(both, house.clinic)).status).toBe(200)
      // Who acts just now decides nothing about entries that wait: each names its author.
      tablet.as = id('away')
      expect((await tablet.send([house.maker(id('sol'), 8)()], house.clinic)).status).toBe(200)
      tablet.as = null
      const authors = [
        { kind: 'import', from: 'laboratory' },
        { kind: 'owner-link', contact: 'contact-1' },
        { kind: 'referring-vet', contact: 'contact-2' },
      ] as const
      for (const author of authors) {
        const { status, error } = await tablet.send([{ ...house.maker('x', 6)(), author }], house.clinic)
        expect([status, error.code]).toEqual([403, 'other-author'])
      }
    })

    it('goes by the role of the author of each entry, not of whoever acts', async () => {
      tablet.as = id('sol')
      const { status, error } = await tablet.send(
        [house.maker(id('nina'), 7)({ kind: 'choice', stream: 'case:shared' })],
        house.clinic,
      )
      expect([status, error.code]).toEqual([403, 'kind-not-allowed'])
      tablet.as = null
    })

    it('switches with a PIN that a tablet can check by itself, and slows down only this device when it is wrong', async () => {
      await tablet.signIn('nina')
      expect((await tablet.act('set-pin', { pin: '12' })).status).toBe(400)
      expect((await tablet.act('set-pin', { pin: '5830' })).status).toBe(200)
      const people = (await tablet.signIn('sol')).body.people as { id: string; pin: PinKept | null }[]
      const pin = people.find((person) => person.id === id('nina'))?.pin as PinKept
      // RFC 7914's scrypt as the tablet computes it, from a package of its own.
      const made = scrypt('5830', hexToBytes(pin.salt), { N: pin.cost, r: 8, p: 1, dkLen: 32 })
      expect(bytesToHex(made)).toBe(pin.hash)

      const noPin = await tablet.act('switch-person', { person: id('sol'), pin: '1111' })
      expect(noPin.error.code).toBe('no-pin')
      const notHere = await tablet.act('switch-person', { person: id('away'), pin: '1111' })
      expect(notHere.error.code).toBe('not-enrolled')
      const tryPin = (browser: Browser, pin: string) => browser.act('switch-person', { person: id('nina'), pin })
      const codes = []
      for (const _ of [1, 2, 3, 4]) codes.push((await tryPin(tablet, '0000')).error.code)
      expect(codes).toEqual(['wrong-pin', 'wrong-pin', 'wrong-pin', 'too-many-tries'])
      expect((await tryPin(tablet, '5830')).status).toBe(429)
      const other = house.browser('other tablet')
      await other.signIn('nina')
      await other.signIn('sol')
      expect((await tryPin(other, '5830')).body).toEqual({ active: id('nina') })
      clock.pass({ seconds: 1 })
      expect((await tryPin(tablet, '5830')).body).toEqual({ active: id('nina') })
      expect((await who(tablet)).body.active).toBe(id('nina'))
    })

    it('lets a person change their PIN, password or others only after proving who they are', async () => {
      await tablet.signIn('sol')
      tablet.as = id('nina')
      const { status, error } = await tablet.act('set-pin', { pin: '9999' })
      expect([status, error.code]).toEqual([403, 'not-proved'])
      const changed = await tablet.act('change-password', { password: 'a guess', newPassword: 'another password' })
      expect([changed.status, changed.error.path]).toEqual([403, 'password'])
      tablet.as = null
      const shared = house.browser('shared with the manager')
      await shared.signIn('mara')
      await shared.signIn('nina')
      shared.as = house.managerId
      const hire = await shared.act('put-person', { id: null, body: { name: 'X', role: 'manager', letters: null } })
      expect([hire.status, hire.error.code]).toEqual([403, 'not-proved'])
    })

    it('signs out one, and the device when nobody is left', async () => {
      tablet.as = id('nina')
      expect((await tablet.act('sign-out', { everyone: false })).body).toEqual({ people: [id('sol')] })
      expect((await tablet.act('list-people', {})).status).toBe(403)
      tablet.as = null
      expect((await who(tablet)).body.people).toHaveLength(1)
      const last = tablet.cookie
      const { headers } = await tablet.act('sign-out', { everyone: false })
      expect(headers.get('set-cookie')).toMatch(/^quiet-ear-session=;.*Max-Age=0/)
      tablet.cookie = last
      expect((await who(tablet)).status).toBe(401)
    })
  })
})

type PinKept = { readonly salt: string; readonly hash: string; readonly cost: number }
