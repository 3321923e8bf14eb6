import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Accounts } from '#actions/people/accounts.ts'
import type { OpenStore } from './journal-store.ts'

/** One store under test, opened any number of times while it is up. */
export type AccountsUnderTest = {
  readonly connect: () => Promise<OpenStore>
  /** Closes what was opened and opens it again, as after a restart. */
  readonly reopen: () => Promise<OpenStore>
  readonly stop: () => Promise<void>
}

const at = (minute: number) => new Date(Date.UTC(2026, 2, 1, 8, minute)).toISOString()
const pin = { salt: 'ab'.repeat(16), hash: 'cd'.repeat(32), cost: 16_384 }

/** What the accounts promise on both stores. */
export function accountsContract(name: string, start: () => Promise<AccountsUnderTest>): void {
  describe(name, () => {
    let place: AccountsUnderTest
    let store: OpenStore
    let accounts: Accounts
    beforeAll(async () => {
      place = await start()
      store = await place.connect()
      accounts = store.accounts
    })
    afterAll(async () => {
      await store?.close()
      await place?.stop()
    })

    const account = (person: string, login = person, clinic = 'clinic-1') => ({
      clinic,
      person,
      login,
      password: `hash of ${person}`,
      madeAt: at(0),
    })
    const session = (id: string, device = 'tablet', person = 'first') => ({
      id,
      clinic: 'clinic-1',
      device,
      deviceName: 'Tablet',
      madeAt: at(0),
      expiresAt: at(1_000),
      active: person,
    })

    it('makes one first account, however many ask at once, and none later', async () => {
      expect(await accounts.any()).toBe(false)
      const tries = await Promise.all([1, 2, 3, 4].map((n) => accounts.first(account('first', `first-${n}`))))
      expect(tries.filter(Boolean)).toHaveLength(1)
      expect(await accounts.any()).toBe(true)
      expect(await accounts.first(account('other', 'other', 'clinic-2'))).toBe(false)
      const made = await accounts.byPerson('clinic-1', 'first')
      expect(made).toMatchObject({ opened: true, active: true, pin: null, password: 'hash of first' })
      expect(await accounts.byLogin(made?.login ?? '')).toEqual(made)
    })

    it('keeps one code for the first account, whoever offers another, until it is replaced', async () => {
      expect(await accounts.firstCode()).toBeUndefined()
      const offers = [1, 2, 3, 4].map((n) => accounts.offerFirstCode({ hash: `hash ${n}`, madeAt: at(n) }, false))
      const [one, ...others] = await Promise.all(offers)
      expect(others).toEqual([one, one, one])
      const next = { hash: 'next', madeAt: at(9) }
      expect(await accounts.offerFirstCode(next, true)).toEqual(next)
      expect(await accounts.firstCode()).toEqual(next)
    })

    it('keeps one login to one person, and changes login, password and state', async () => {
      expect(await accounts.put({ ...account('second'), active: true })).toBe(true)
      expect(await accounts.put({ ...account('third', 'second'), active: true })).toBe(false)
      expect(await accounts.put({ ...account('second', 'second', 'clinic-2'), active: true })).toBe(false)
      expect(await accounts.put({ ...account('second', 'renamed'), password: 'new', active: false })).toBe(true)
      expect(await accounts.byLogin('second')).toBeUndefined()
      expect(await accounts.byLogin('renamed')).toMatchObject({ password: 'new', active: false, opened: false })
      expect((await accounts.all('clinic-1')).map(({ person }) => person)).toEqual(['first', 'second'])
      expect(await accounts.byPerson('clinic-1', 'third')).toBeUndefined()
    })

    it('keeps a PIN through a change of the account, and takes it away', async () => {
      await accounts.setPin('clinic-1', 'second', pin)
      await accounts.put({ ...account('second', 'renamed'), active: true })
      await accounts.setPassword('clinic-1', 'second', 'newer')
      expect(await accounts.byLogin('renamed')).toMatchObject({ pin, password: 'newer' })
      await accounts.setPin('clinic-1', 'second', null)
      expect((await accounts.byLogin('renamed'))?.pin).toBeNull()
    })

    it('keeps a session with its people, and the old token is worth nothing after enrolling', async () => {
      await accounts.begin(session('s1'), 'token-1')
      expect(await accounts.byToken('token-1')).toEqual({
        ...session('s1'),
        endedAt: null,
        people: [{ person: 'first', since: at(0), until: null }],
      })
      const now = { at: at(5), tokenHash: 'token-2', expiresAt: at(2_000), deviceName: 'Theatre tablet' }
      await accounts.enrol('s1', 'second', now)
      await accounts.enrol('s1', 'second', { ...now, at: at(6) })
      expect(await accounts.byToken('token-1')).toBeUndefined()
      expect(await accounts.byToken('token-2')).toMatchObject({
        active: 'second',
        expiresAt: at(2_000),
        deviceName: 'Theatre tablet',
        people: [{ person: 'first' }, { person: 'second', since: at(5), until: null }],
      })
    })

    it('lets one person leave and come back, and ends a session once', async () => {
      await accounts.leave('s1', 'second', at(10))
      expect(await accounts.byToken('token-2')).toMatchObject({ active: null, endedAt: null })
      await accounts.enrol('s1', 'second', {
        at: at(20),
        tokenHash: 'token-3',
        expiresAt: at(2_000),
        deviceName: 'Tablet',
      })
      await accounts.activate('s1', 'first')
      const people = (await accounts.byToken('token-3'))?.people
      expect(people?.filter(({ person }) => person === 'second')).toEqual([
        { person: 'second', since: at(5), until: at(10) },
        { person: 'second', since: at(20), until: null },
      ])
      await accounts.end('s1', at(30))
      await accounts.end('s1', at(40))
      expect(await accounts.byToken('token-3')).toMatchObject({ endedAt: at(30), active: null })
    })

    it('takes a person off every device but one', async () => {
      for (const n of [2, 3]) await accounts.begin(session(`s${n}`, `tablet-${n}`, 'second'), `token-s${n}`)
      await accounts.leaveEverywhere('clinic-1', 'second', at(50), 's3')
      const untils = async (token: string) => (await accounts.byToken(token))?.people.map(({ until }) => until)
      expect(await untils('token-s2')).toEqual([at(50)])
      expect(await untils('token-s3')).toEqual([null])
      expect((await accounts.ofDevice('clinic-1', 'tablet-2')).map(({ id }) => id)).toEqual(['s2'])
      // s1 has ended, and at minute 1,000 the others run out.
      const open = async (now: string) => (await accounts.openSessions('clinic-1', now)).map(({ id }) => id).sort()
      expect(await open(at(999))).toEqual(['s2', 's3'])
      expect(await open(at(1_000))).toEqual([])
    })

    it('counts tries one by one, also at once, tells when to try again, and forgets', async () => {
      const delay = (tries: number) => (tries < 2 ? 0 : 60_000 * tries)
      const atOnce = await Promise.all([1, 2, 3, 4].map(() => accounts.tryNow('key', at(0), delay)))
      expect(atOnce.filter((again) => again === null)).toHaveLength(2)
      expect(atOnce.filter((again) => again !== null)).toEqual([at(2), at(2)])
      expect(await accounts.tryNow('key', at(1), delay)).toBe(at(2))
      expect(await accounts.tryNow('other key', at(1), delay)).toBeNull()
      expect(await accounts.tryNow('key', at(2), delay)).toBeNull()
      expect(await accounts.tryNow('key', at(4), delay)).toBe(at(5))
      await accounts.forgetTries('key')
      expect(await accounts.tryNow('key', at(4), delay)).toBeNull()
      expect(await accounts.tryNow('key', at(4), delay)).toBeNull()
      expect(await accounts.tryNow('key', at(4), delay)).toBe(at(6))
      // A day later the slate is clean.
      expect(await accounts.tryNow('key', at(4 + 1_500), delay)).toBeNull()
    })

    it('writes who read a case, once per person and minute', async () => {
      const line = { stream: 'case:1', person: 'first', device: 'tablet', at: '2026-03-01T08:00Z' }
      await accounts.logRead('clinic-1', line)
      await accounts.logRead('clinic-1', { ...line, device: 'phone' })
      await accounts.logRead('clinic-1', { ...line, person: 'second' })
      await accounts.logRead('clinic-1', { ...line, at: '2026-03-01T08:01Z' })
      await accounts.logRead('clinic-2', line)
      expect(await accounts.readLog('clinic-1', 'case:1')).toEqual([
        line,
        { ...line, person: 'second' },
        { ...line, at: '2026-03-01T08:01Z' },
      ])
      expect(await accounts.readLog('clinic-1', 'case:2')).toEqual([])
    })

    it('puts a leave in the place of those it overlaps, and takes it away', async () => {
      const leave = (id: string, from: string, until: string) => {
        return { id, person: 'first', from, until, deputy: 'second', by: 'first', at: at(0) }
      }
      const ids = async () => (await accounts.leaves('clinic-1')).map(({ id }) => id).sort()
      const july = leave('july', '2026-07-01', '2026-07-14')
      await accounts.setLeave('clinic-1', july, july)
      const august = leave('august', '2026-08-01', '2026-08-02')
      await accounts.setLeave('clinic-1', august, august)
      expect(await accounts.leaves('clinic-1')).toContainEqual(july)
      const longer = leave('longer', '2026-07-14', '2026-07-31')
      await accounts.setLeave('clinic-1', longer, longer)
      expect(await ids()).toEqual(['august', 'longer'])
      await accounts.setLeave('clinic-1', { person: 'second', from: '2026-01-01', until: '2026-12-31' }, null)
      expect(await ids()).toEqual(['august', 'longer'])
      await accounts.setLeave('clinic-1', { person: 'first', from: '2026-08-02', until: '2026-08-02' }, null)
      expect(await ids()).toEqual(['longer'])
    })

    it('gives the rows of a register as they stand: the last revision, and none that was erased', async () => {
      const row = (id: string, name: string | null) => {
        const body = name === null ? null : { name, role: 'nurse', letters: null }
        return store.putRegister('clinic-1', { register: 'person', id, body, by: 'first', at: at(0) })
      }
      await row('b', 'Old name')
      await row('a', 'Somebody')
      await row('b', 'New name')
      await row('c', 'Gone')
      await row('c', null)
      const rows = await store.current('clinic-1', 'person')
      expect(rows.map(({ id, revision, body }) => [id, revision, body?.name])).toEqual([
        ['a', 1, 'Somebody'],
        ['b', 2, 'New name'],
      ])
      expect(await store.current('clinic-1', 'contact')).toEqual([])
    })

    it('keeps a private link by the hash of its token, with who made it, who opened it last and who ended it first', async () => {
      const { ownerLinks } = store
      const link = (id: string, stream = 'case:tansy', clinic = 'clinic-1') => {
        const times = { madeAt: at(Number(id.slice(-1))), madeBy: 'first', expiresAt: at(500) }
        return { id, clinic, stream, contact: 'contact-1', use: 'private' as const, ...times }
      }
      await ownerLinks.keep(link('link-2'), 'hash-2')
      await ownerLinks.keep({ ...link('link-1'), use: 'in-room' }, 'hash-1')
      await ownerLinks.keep(link('link-3', 'case:other'), 'hash-3')
      await ownerLinks.keep(link('link-4', 'case:tansy', 'clinic-2'), 'hash-4')
      await expect(ownerLinks.keep(link('link-5'), 'hash-1')).rejects.toThrow()
      expect(await ownerLinks.byToken('hash-9')).toBeUndefined()
      expect(await ownerLinks.byToken('hash-1')).toEqual({
        ...link('link-1'),
        use: 'in-room',
        lastOpenedAt: null,
        revokedAt: null,
        revokedBy: null,
      })
      expect((await ownerLinks.ofCases('clinic-1', ['case:tansy'])).map(({ id }) => id)).toEqual(['link-1', 'link-2'])
      expect(await ownerLinks.ofCases('clinic-1', [])).toEqual([])
      await ownerLinks.opened('link-2', at(30))
      expect(await ownerLinks.revoke('clinic-2', 'link-2', 'stranger', at(39))).toBe(false)
      expect(await ownerLinks.revoke('clinic-1', 'link-2', 'first', at(40))).toBe(true)
      expect(await ownerLinks.revoke('clinic-1', 'link-2', 'second', at(50))).toBe(true)
      const ended = { lastOpenedAt: at(30), revokedAt: at(40), revokedBy: 'first' }
      expect(await ownerLinks.byToken('hash-2')).toMatchObject(ended)
      expect((await ownerLinks.standing('clinic-1')).map(({ id }) => id)).toEqual(['link-1', 'link-3'])
    })

    it('keeps a link of a referring practice by the hash of its token, with what it asks for', async () => {
      const { vetLinks } = store
      const link = (id: string, stream = 'case:tansy', clinic = 'clinic-1') => {
        const times = { madeAt: at(Number(id.slice(-1))), madeBy: 'first', expiresAt: at(500) }
        const asked = { asked: 'stitches' as const, side: 'LEFT' as const, dueFrom: at(100), dueBy: at(400) }
        return { id, clinic, stream, contact: 'contact-2', ...asked, ...times }
      }
      const stretch = { ...link('vet-1'), asked: 'stretch' as const, side: null, dueFrom: null, dueBy: null }
      await vetLinks.keep(link('vet-2'), 'vet-hash-2')
      await vetLinks.keep(stretch, 'vet-hash-1')
      await vetLinks.keep(link('vet-3', 'case:tansy', 'clinic-2'), 'vet-hash-3')
      await expect(vetLinks.keep(link('vet-4'), 'vet-hash-1')).rejects.toThrow()
      const fresh = { lastOpenedAt: null, revokedAt: null, revokedBy: null }
      expect(await vetLinks.byToken('vet-hash-1')).toEqual({ ...stretch, ...fresh })
      expect(await vetLinks.byToken('hash-1')).toBeUndefined()
      expect(await vetLinks.ofCases('clinic-1', ['case:tansy'])).toEqual([
        { ...stretch, ...fresh },
        { ...link('vet-2'), ...fresh },
      ])
      await vetLinks.opened('vet-2', at(30))
      expect(await vetLinks.revoke('clinic-2', 'vet-2', 'stranger', at(39))).toBe(false)
      expect(await vetLinks.revoke('clinic-1', 'vet-2', 'first', at(40))).toBe(true)
      expect(await vetLinks.revoke('clinic-1', 'vet-2', 'second', at(50))).toBe(true)
      const ended = { lastOpenedAt: at(30), revokedAt: at(40), revokedBy: 'first' }
      expect(await vetLinks.byToken('vet-hash-2')).toMatchObject(ended)
      expect((await vetLinks.standing('clinic-1', at(499))).map(({ id }) => id)).toEqual(['vet-1'])
      expect(await vetLinks.standing('clinic-1', at(500))).toEqual([])
    })

    it('has everything again after a restart', async () => {
      const before = [
        await accounts.all('clinic-1'),
        await accounts.openSessions('clinic-1', at(0)),
        await accounts.leaves('clinic-1'),
        await store.ownerLinks.ofCases('clinic-1', ['case:tansy']),
        await store.vetLinks.ofCases('clinic-1', ['case:tansy']),
      ]
      store = await place.reopen()
      accounts = store.accounts
      const after = [
        await accounts.all('clinic-1'),
        await accounts.openSessions('clinic-1', at(0)),
        await accounts.leaves('clinic-1'),
        await store.ownerLinks.ofCases('clinic-1', ['case:tansy']),
        await store.vetLinks.ofCases('clinic-1', ['case:tansy']),
      ]
      expect(after).toEqual(before)
      expect(before.flat().length).toBeGreaterThan(4)
    })
  })
}
