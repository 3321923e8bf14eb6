import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Role } from '#actions/action.ts'
import { kinds } from '#core/journal/kinds/index.ts'
import { personRow } from '#core/journal/registers.ts'
import { mayWrite } from '#core/people/may-write.ts'
import { House } from './house-for-tests.ts'

type Joined = Awaited<ReturnType<House['join']>>

describe('who may write what, asked at the server', () => {
  const roles: readonly Role[] = personRow.shape.role.options
  const joined = new Map<Role, Joined>()
  let house: House
  beforeAll(async () => {
    house = await House.open()
    for (const [at, role] of roles.entries()) {
      const one = await house.join(role, role)
      joined.set(role, { ...one, make: house.maker(one.person, at + 1) })
    }
  })
  afterAll(() => house?.close())
  const of = (role: Role) => joined.get(role) as Joined

  it.each(roles)('%s writes the kinds of the table and no other', async (role) => {
    const { browser, make } = of(role)
    for (const kind of kinds) {
      const may = (mayWrite[kind.name] as readonly Role[]).includes(role)
      const entry = make({ kind: kind.name, stream: `case:${role}-${kind.name}` })
      const { status, body, error } = await browser.send([entry], house.clinic)
      if (may) expect([kind.name, status, body.entries?.[0]?.outcome]).toEqual([kind.name, 200, 'accepted'])
      else {
        expect([kind.name, status, error?.code]).toEqual([kind.name, 403, 'kind-not-allowed'])
        expect(error.path).toBe('entries[0].kind')
        // Who, as what, which kind, and who could.
        for (const word of [`Person ${role}`, role, kind.name, ...mayWrite[kind.name]]) {
          expect(error.message).toContain(word)
        }
        expect(await house.serving.store.entry(house.clinic, entry.id)).toBeUndefined()
      }
    }
  })

  it('lets what was done and seen be recorded by everybody who stands at the animal', () => {
    const done = ['drug-given', 'drug-wasted', 'observation', 'theatre-stamp', 'count', 'blood-loss', 'check'] as const
    for (const kind of done) {
      for (const role of ['surgeon', 'nurse', 'anaesthetist'] as const) expect(mayWrite[kind]).toContain(role)
    }
    for (const writers of Object.values(mayWrite)) expect(writers).not.toContain('read-only')
  })

  it('keeps a kind from a newer program for everybody who works here', async () => {
    for (const role of roles) {
      const { browser, make } = of(role)
      const entry = { ...make({ stream: `case:${role}-new` }), kind: 'from-tomorrow' }
      expect([role, (await browser.send([entry], house.clinic)).status]).toEqual([
        role,
        role === 'read-only' ? 403 : 200,
      ])
    }
  })

  it('lets nobody take back or correct what they may not write, whatever kind they do it with', async () => {
    const surgeon = of('surgeon')
    const desk = of('desk')
    const stream = 'case:agreed'
    const agreed = surgeon.make({ kind: 'agreement', stream })
    expect((await surgeon.browser.send([agreed], house.clinic)).status).toBe(200)
    const { subject } = agreed
    const tries = [
      {
        entry: desk.make({ kind: 'withdrawal', stream, subject, withdraws: agreed.id, reason: 'Mistake.' }),
        at: 'withdraws',
      },
      { entry: desk.make({ stream, subject, supersedes: [agreed.id], reason: 'Mistake.' }), at: 'supersedes' },
      {
        entry: desk.make({ kind: 'weight', stream, subject, withdraws: agreed.id, reason: 'Mistake.' }),
        at: 'withdraws',
      },
    ]
    for (const { entry, at } of tries) {
      const { status, error } = await desk.browser.send([entry], house.clinic)
      expect([status, error?.code, error?.path]).toEqual([403, 'kind-not-allowed', `entries[0].${at}`])
    }
    // Nor behind an entry of one's own that bears the id of the other.
    const mask = { ...desk.make({ stream, subject }), id: agreed.id }
    const behind = desk.make({ stream, subject, supersedes: [agreed.id], reason: 'Mistake.' })
    expect((await desk.browser.send([mask, behind], house.clinic)).error.code).toBe('kind-not-allowed')
    // Nor by taking back the surgeon's own withdrawal, which would bring the agreement to life again.
    const withdrawn = surgeon.make({ kind: 'withdrawal', stream, subject, withdraws: agreed.id, reason: 'Other ear.' })
    expect((await surgeon.browser.send([withdrawn], house.clinic)).status).toBe(200)
    const revive = desk.make({ kind: 'withdrawal', stream, subject, withdraws: withdrawn.id, reason: 'Mistake.' })
    expect((await desk.browser.send([revive], house.clinic)).error.code).toBe('kind-not-allowed')
    const own = desk.make({ stream, subject })
    const back = desk.make({ kind: 'withdrawal', stream, subject, withdraws: own.id, reason: 'Twice.' })
    expect((await desk.browser.send([own, back], house.clinic)).status).toBe(200)
  })

  it('goes by the role a person has now', async () => {
    const changing = await house.join('changing', 'nurse')
    const entry = () =>
      house.maker(
        changing.person,
        Math.floor(performance.now() * 7) % 60_000,
      )({ kind: 'observation', stream: 'case:now' })
    expect((await changing.browser.send([entry()], house.clinic)).status).toBe(200)
    const body = { name: 'Person changing', role: 'read-only', letters: null }
    await house.manager.act('put-person', { id: changing.person, body })
    expect((await changing.browser.send([entry()], house.clinic)).status).toBe(403)
  })
})
