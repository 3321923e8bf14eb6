import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { ClockForTests } from './clock-for-tests.ts'
import { type Browser, House, passwordFor } from './house-for-tests.ts'

describe('looking after people', () => {
  const clock = new ClockForTests('2026-07-10T09:00:00.000Z')
  let house: House
  let nurse: { browser: Browser; person: string }
  let surgeon: { browser: Browser; person: string }
  beforeAll(async () => {
    house = await House.open({ clock })
    nurse = await house.join('nora', 'nurse')
    surgeon = await house.join('sven', 'surgeon')
  })
  afterAll(() => house?.close())
  const status = async (asked: Promise<{ status: number }>) => (await asked).status

  it('is for managers: nobody else makes people, accounts or roles, least of all their own', async () => {
    const body = { name: 'Eve', role: 'manager', letters: null }
    const account = { person: nurse.person, login: 'nora', password: 'a new password' }
    for (const { browser } of [nurse, surgeon]) {
      expect(await status(browser.act('put-person', { id: null, body }))).toBe(403)
      expect(await status(browser.act('put-person', { id: nurse.person, body }))).toBe(403)
      expect(await status(browser.act('put-account', account))).toBe(403)
    }
    const own = await house.manager.act('put-person', { id: house.managerId, body: { ...body, role: 'surgeon' } })
    expect([own.status, own.error.code]).toEqual([409, 'own-role'])
    const renamed = { name: 'Mara Married', role: 'manager', letters: null }
    expect(await status(house.manager.act('put-person', { id: house.managerId, body: renamed }))).toBe(200)
    const close = { person: house.managerId, login: 'mara', password: null, active: false }
    expect((await house.manager.act('put-account', close)).error.code).toBe('own-account')
    expect(await status(house.manager.act('put-person', { id: 'person-nobody', body }))).toBe(404)
    expect(await status(house.manager.act('put-account', { ...account, person: 'person-nobody' }))).toBe(404)
  })

  it('gives a login to one person only, and a new account only with a password', async () => {
    const taken = { person: surgeon.person, login: ' NORA', password: null }
    const { status, error } = await house.manager.act('put-account', taken)
    expect([status, error.code, error.path]).toEqual([409, 'login-taken', 'login'])
    const body = { name: 'New', role: 'desk', letters: null }
    const { id } = (await house.manager.act('put-person', { id: null, body })).body
    const without = await house.manager.act('put-account', { person: id, login: 'new', password: null })
    expect([without.status, without.error.path]).toEqual([400, 'password'])
  })

  it('closes an account: it is signed out everywhere at once and cannot come back until it is opened again', async () => {
    const { browser, person } = await house.join('leaving', 'nurse')
    const account = { person, login: 'leaving', password: null }
    await house.manager.act('put-account', { ...account, active: false })
    expect(await status(browser.act('who-am-i', {}))).toBe(401)
    expect(await status(browser.signIn('leaving'))).toBe(401)
    await house.manager.act('put-account', { ...account, active: true })
    expect(await status(browser.signIn('leaving'))).toBe(200)
  })

  it('changes the own password with the old one, and signs out at every other device', async () => {
    const { browser } = await house.join('changing', 'nurse')
    const other = house.browser('phone')
    await other.signIn('changing')
    const change = { password: passwordFor('changing'), newPassword: 'a better password' }
    expect((await browser.act('change-password', { ...change, newPassword: 'short' })).error.path).toBe('newPassword')
    expect((await browser.act('change-password', { ...change, newPassword: 'changing' })).status).toBe(400)
    expect(await status(browser.act('change-password', change))).toBe(200)
    expect(await status(browser.act('who-am-i', {}))).toBe(200)
    expect(await status(other.act('who-am-i', {}))).toBe(401)
    expect(await status(other.signIn('changing'))).toBe(401)
    expect(await status(other.signIn('changing', 'a better password'))).toBe(200)
    for (const _ of [1, 2, 3]) await browser.act('change-password', { ...change, password: 'a guess' })
    expect(await status(browser.act('change-password', { ...change, password: 'a guess' }))).toBe(429)
  })

  it('shows a manager every device, everybody else their own, and ends the session of a lost one', async () => {
    const { browser } = await house.join('losing', 'nurse')
    const lost = house.browser('lost tablet')
    await lost.signIn('losing')
    await lost.signIn('sven')
    const devicesOf = async (who: Browser) => (await who.act('list-devices', {})).body.devices as Device[]
    const own = await devicesOf(browser)
    expect(own.map(({ name, here }) => [name, here]).sort()).toEqual([
      ['device of losing', true],
      ['lost tablet', false],
    ])
    expect((await devicesOf(house.manager)).length).toBeGreaterThan(own.length)
    const { session } = own.find(({ name }) => name === 'lost tablet') as Device
    expect(await status(nurse.browser.act('end-session', { session }))).toBe(404)
    // Who is no manager ends their own part only: the surgeon stays signed in there.
    expect((await browser.act('end-session', { session })).body).toEqual({ people: [surgeon.person] })
    expect((await lost.act('who-am-i', {})).body.people).toHaveLength(1)
    expect((await house.manager.act('end-session', { session })).body).toEqual({ people: [] })
    expect(await status(lost.act('who-am-i', {}))).toBe(401)
    expect(await status(house.manager.act('end-session', { session }))).toBe(404)
  })

  it('shows logins to managers and to oneself', async () => {
    const seen = async (browser: Browser) => (await browser.act('list-people', {})).body.people as Person[]
    const byNurse = (await seen(nurse.browser)).filter(({ login }) => login !== null)
    expect(byNurse.map(({ login }) => login)).toEqual(['nora'])
    expect((await seen(house.manager)).find(({ id }) => id === surgeon.person)?.login).toBe('sven')
  })

  it("lets deputies stand in: one's own leave, or any by a manager, and never somebody who is not here", async () => {
    const leave = { person: nurse.person, from: '2026-07-10', until: '2026-07-12', deputy: surgeon.person }
    const today = async () => {
      const { body } = await surgeon.browser.act('list-people', {})
      const people = body.people as Person[]
      return [body.today, people.find(({ id }) => id === nurse.person)?.today, body.leaves.length]
    }
    expect(await status(surgeon.browser.act('set-leave', leave))).toBe(403)
    expect((await nurse.browser.act('set-leave', { ...leave, deputy: nurse.person })).error.path).toBe('deputy')
    expect((await nurse.browser.act('set-leave', { ...leave, deputy: 'person-nobody' })).error.path).toBe('deputy')
    expect((await nurse.browser.act('set-leave', { ...leave, until: '2026-07-09' })).error.path).toBe('until')
    expect(await today()).toEqual(['2026-07-10', nurse.person, 0])
    expect(await status(nurse.browser.act('set-leave', leave))).toBe(200)
    expect(await today()).toEqual(['2026-07-10', surgeon.person, 1])
    // Away as well: then the manager, who is named by the manager.
    const next = { person: surgeon.person, from: '2026-07-01', until: '2026-07-31', deputy: house.managerId }
    expect(await status(house.manager.act('set-leave', next))).toBe(200)
    expect((await today())[1]).toBe(house.managerId)
    expect(await status(nurse.browser.act('set-leave', { ...leave, deputy: null }))).toBe(200)
    expect(await today()).toEqual(['2026-07-10', nurse.person, 1])
  })

  it('hands over only the closed days of a span, and leaves a leave that is there as it is', async () => {
    const span = { person: nurse.person, from: '2026-08-01', until: '2026-08-31', deputy: surgeon.person }
    const away = { ...span, from: '2026-08-15', until: '2026-08-16', deputy: house.managerId }
    const spans = async () => {
      const { body } = await house.manager.act('list-people', {})
      const leaves = body.leaves as { readonly person: string; readonly from: string; readonly until: string }[]
      return leaves.filter(({ person, from }) => person === nurse.person && from >= '2026-08').map(({ from }) => from)
    }
    expect(await status(nurse.browser.act('set-leave', away))).toBe(200)
    expect(await status(nurse.browser.act('set-leave', { ...span, onClosedDays: true }))).toBe(200)
    const found = (await spans()).sort()
    expect(found).toContain('2026-08-15')
    // Sundays are closed in this house; that of the leave stays with its own deputy.
    expect(found.length).toBeGreaterThan(3)
    const { body } = await house.manager.act('list-people', {})
    const leaves = body.leaves as (typeof span)[]
    expect(leaves.filter(({ deputy, from }) => deputy === house.managerId && from === '2026-08-15')).toHaveLength(1)
    expect(
      (await nurse.browser.act('set-leave', { ...span, until: '2028-08-31', onClosedDays: true })).error.path,
    ).toBe('until')
    expect(await status(nurse.browser.act('set-leave', { ...span, deputy: null }))).toBe(200)
  })

  it('shows who read a case to surgeons and managers', async () => {
    const line = { stream: 'case:1', person: nurse.person, device: 'device of nora', at: '2026-07-10T09:00Z' }
    await house.serving.store.accounts.logRead(house.clinic, line)
    expect((await surgeon.browser.act('read-log', { stream: 'case:1' })).body).toEqual({
      lines: [{ ...line, owner: null }],
    })
    expect(await status(house.manager.act('read-log', { stream: 'case:1' }))).toBe(200)
    expect(await status(nurse.browser.act('read-log', { stream: 'case:1' }))).toBe(403)
  })

  it('takes requests of a usual size only where no entries are sent', async () => {
    const large = { login: 'mara', password: 'x'.repeat(300 * 1024), device: { id: 'a', name: 'a' } }
    const { status, error } = await house.browser('large').act('sign-in', large)
    expect([status, error.code]).toEqual([413, 'too-large'])
  })
})

describe('an entry written after the session had ended', () => {
  const clock = new ClockForTests()
  let house: House
  beforeAll(async () => {
    house = await House.open({ clock })
  })
  afterAll(() => house?.close())

  it('waits on the device for its author, is then accepted, and is marked late; what was written in time is not', async () => {
    const { browser, person } = await house.join('night', 'nurse')
    let writer = 10
    const written = (at: string, more = {}) => {
      writer += 1
      return { ...house.maker(person, writer)({ stream: 'case:late' }), writtenAt: at, ...more }
    }
    const lateOf = async (entry: { id: string }) =>
      (await house.serving.store.entry(house.clinic, entry.id))?.envelope.late
    const before = written('2026-02-01T09:00:00.000Z')
    const inTime = written('2026-03-02T09:30:00.000Z')
    clock.pass({ seconds: 3_600 })
    await browser.act('sign-out', { everyone: true })
    const cookie = browser.cookie
    const late = written('2026-03-02T11:00:00.000Z')
    const slow = { ...late.device, offset: { ms: -3_600_000, ageMs: 0 } }
    const inTimeByServer = written('2026-03-02T10:30:00.000Z', { device: slow })
    clock.pass({ seconds: 7_200 })
    const refused = await browser.send([late], house.clinic)
    expect([refused.status, refused.error.code]).toEqual([401, 'not-signed-in'])
    expect(cookie).toBeNull()
    await browser.signIn('night')
    const now = written('2026-03-02T12:00:01.000Z')
    const all = [before, inTime, late, inTimeByServer, now]
    const { status, body } = await browser.send(all, house.clinic)
    expect([status, body.entries.map(({ id }: { id: string }) => id)]).toEqual([200, all.map(({ id }) => id)])
    expect(await Promise.all(all.map(lateOf))).toEqual([null, null, 'session-expired', null, null])
  })

  it('is late also when the session ran out by itself, or one was signed out at a shared device', async () => {
    const { browser, person } = await house.join('expiring', 'surgeon')
    await house.hire('staying', 'nurse')
    await browser.signIn('staying')
    browser.as = person
    clock.pass({ seconds: 60 })
    await browser.act('sign-out', { everyone: false })
    browser.as = null
    clock.pass({ seconds: 60 })
    const between = { ...house.maker(person, 40)({ stream: 'case:late' }), writtenAt: clock.now() }
    const waiting = await browser.send([between], house.clinic)
    expect([waiting.status, waiting.error.code]).toEqual([403, 'author-signed-out'])
    expect(waiting.error.path).toBe('entries[0].author.person')
    clock.pass({ seconds: 60 })
    await browser.signIn('expiring')
    clock.pass({ days: 91 })
    const after = { ...house.maker(person, 41)({ stream: 'case:late' }), writtenAt: clock.now() }
    expect((await browser.send([after], house.clinic)).status).toBe(401)
    clock.pass({ days: 1 })
    await browser.signIn('expiring')
    expect((await browser.send([between, after], house.clinic)).status).toBe(200)
    for (const { id } of [between, after]) {
      expect((await house.serving.store.entry(house.clinic, id))?.envelope.late).toBe('session-expired')
    }
  })

  it('of somebody whose account was closed meanwhile is brought by whoever else signs in at that device', async () => {
    await house.manager.signIn('mara')
    const { browser, person } = await house.join('gone', 'nurse')
    const helper = await house.hire('helping', 'anaesthetist')
    const account = { person, login: 'gone', password: null }
    const written = (writer: number, author = person) => ({
      ...house.maker(author, writer)({ kind: 'observation', stream: 'case:closed' }),
      writtenAt: clock.now(),
    })
    clock.pass({ seconds: 60 })
    const before = written(50)
    clock.pass({ seconds: 60 })
    await house.manager.act('put-account', { ...account, active: false })
    clock.pass({ seconds: 60 })
    const after = written(51)
    expect((await browser.send([before], house.clinic)).status).toBe(401)
    await browser.signIn('helping')
    const own = written(52, helper)
    const { status, body } = await browser.send([before, after, own], house.clinic)
    expect([status, body.entries?.map(({ outcome }: { outcome: string }) => outcome)]).toEqual([
      200,
      ['accepted', 'accepted', 'accepted'],
    ])
    const kept = await Promise.all([before, after, own].map(({ id }) => house.serving.store.entry(house.clinic, id)))
    expect(kept.map((one) => [one?.header.author, one?.envelope.late])).toEqual([
      [{ kind: 'person', person }, null],
      [{ kind: 'person', person }, 'session-expired'],
      [{ kind: 'person', person: helper }, null],
    ])
    // Neither another kind than their role may write, nor from a device they never signed in at.
    const decided = house.maker(person, 53)({ kind: 'agreement', stream: 'case:closed' })
    expect((await browser.send([decided], house.clinic)).error.code).toBe('kind-not-allowed')
    const elsewhere = await house.join('elsewhere', 'nurse')
    expect((await elsewhere.browser.send([written(54)], house.clinic)).error.code).toBe('other-author')
    // Opened again, the account is its owner's: then only they send what they wrote.
    await house.manager.act('put-account', { ...account, active: true })
    expect((await browser.send([written(55)], house.clinic)).error.code).toBe('author-signed-out')
  })
})

type Device = { readonly session: string; readonly name: string; readonly here: boolean }
type Person = { readonly id: string; readonly login: string | null; readonly today: string }
