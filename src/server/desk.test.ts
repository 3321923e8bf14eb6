import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { project } from '#actions/journal/project.ts'
import { readContacts } from '#actions/people/read-contacts.ts'
import { readTheatreList } from '#actions/theatre/read-theatre-list.ts'
import { readTray } from '#actions/tray/read-tray.ts'
import { booking } from '#core/journal/kinds/booking.ts'
import { identity } from '#core/journal/kinds/identity.ts'
import { House } from './house-for-tests.ts'

describe('what the front desk reads', () => {
  let house: House
  let nurse: Awaited<ReturnType<House['join']>>
  beforeAll(async () => {
    house = await House.open({ project })
    nurse = await house.join('nora', 'nurse')
  })
  afterAll(() => house?.close())

  it('is the tray with what waits, and each of it is owed until it is filed', async () => {
    const { browser, make } = nurse
    const arrived = make({ kind: 'arrived-paper', stream: 'tray' })
    await browser.send([arrived], house.clinic)
    const { status, body } = await browser.act('read-tray', {})
    expect(status).toBe(200)
    expect(readTray.output.safeParse(body).error).toBeUndefined()
    expect(body.entries.map(({ header }: { header: { id: string } }) => header.id)).toEqual([arrived.id])
    const owedIds = async () => (await browser.act('read-lists', {})).body.owed.map(({ id }: { id: string }) => id)
    expect(await owedIds()).toEqual([`arrived-paper:${arrived.id}`])

    const subject = { kind: 'ear', animal: 'animal-1', side: 'LEFT' } as const
    const reason = 'Filed from the holding tray.'
    const filed = { ...make({ kind: 'paper', stream: 'case:a', subject, reason }), refiledFrom: arrived.id }
    const refile = make({
      kind: 'refile',
      stream: 'tray',
      subject: { kind: 'clinic' },
      body: { toStream: 'case:a', toSubject: subject, copy: filed.id },
      withdraws: arrived.id,
      reason,
    })
    const answers = (await browser.send([filed, refile], house.clinic)).body.entries
    expect(answers.map(({ outcome }: { outcome: string }) => outcome)).toEqual(['accepted', 'accepted'])
    expect(await owedIds()).toEqual([])
    expect((await browser.act('read-tray', {})).body.entries).toHaveLength(2)
  })

  it('is the theatre list of an operation that was booked, with its side and what is missing', async () => {
    const { browser, make } = nurse
    const body = { ...booking.example, surgeon: house.managerId, anaesthetist: null, agreement: null }
    const entries = [
      make({ kind: 'identity', stream: 'case:b', body: identity.example }),
      make({ kind: 'booking', stream: 'case:b', body }),
    ]
    await browser.send(entries, house.clinic)
    const listed = await browser.act('read-theatre-list', { from: '2026-02-01', until: '2026-02-28' })
    expect(listed.status).toBe(200)
    expect(readTheatreList.output.safeParse(listed.body).error).toBeUndefined()
    const [day, ...more] = listed.body.days
    expect(more).toEqual([])
    expect(day.day).toBe('2026-02-10')
    expect(day.lines).toMatchObject([
      { stream: 'case:b', name: 'Bramble', side: 'LEFT', surgeon: 'Mara Manager', state: 'not-agreed', weight: null },
    ])
    const codes = day.lines[0].missing.map(({ code }: { code: string }) => code)
    expect(codes).toEqual(expect.arrayContaining(['consent', 'baseline', 'weight', 'anaesthetist']))
    expect(day.lines[0].fasting).toEqual({ kind: 'unknown', missing: ['weight'] })
    expect((await browser.act('read-theatre-list', { from: '2026-03-01', until: '2026-03-31' })).body.days).toEqual([])
  })

  it('is an address book without owners', async () => {
    const row = { practice: null, phone: '0', email: null, address: [] }
    const put = (id: string, body: object) => nurse.browser.act('put-row', { register: 'contact', id, body })
    await put('c1', { kind: 'owner', name: 'Olive Owner', ...row })
    await put('c2', { kind: 'vet', name: 'Vera Vet', ...row })
    const { body } = await nurse.browser.act('read-contacts', {})
    expect(readContacts.output.safeParse(body).error).toBeUndefined()
    expect(body.contacts.map(({ name }: { name: string }) => name)).toEqual(['Vera Vet'])
  })

  it('is for people who are signed in', async () => {
    for (const action of ['read-tray', 'read-contacts']) {
      expect((await house.browser('street').act(action, {})).status).toBe(401)
    }
  })

  it('finds who is on record already under what is typed, owners too, the surest first, for those who may write it', async () => {
    const nurse = await house.join('finding', 'nurse')
    const put = (id: string, name: string, phone: string | null, email: string | null) => {
      const body = { kind: 'owner', name, practice: null, phone, email, address: [] }
      return nurse.browser.act('put-row', { register: 'contact', id, body, after: null })
    }
    await put('c-name', 'Ada Lund', null, null)
    await put('c-phone', 'Bo Lund', '01632 960181', null)
    await put('c-both', 'Ada Lund', '+44 1632 960181', 'ada@lund.example')
    await put('c-other', 'Cy Moor', '01632 960182', null)
    const typed = { name: 'ada lund', phone: '01632 960181', email: 'ADA@lund.example' }
    const { status, body } = await nurse.browser.act('find-contact', typed)
    expect(status).toBe(200)
    expect(body.contacts.map(({ id, why }: { id: string; why: string[] }) => [id, why])).toEqual([
      ['c-both', ['same-phone', 'same-email', 'same-name']],
      ['c-phone', ['same-phone']],
      ['c-name', ['same-name']],
    ])
    expect(JSON.stringify(body)).not.toContain('lund.example')
    expect((await nurse.browser.act('find-contact', { name: '', phone: '', email: '' })).body.contacts).toEqual([])
    const reader = await house.join('only-reading', 'read-only')
    expect((await reader.browser.act('find-contact', typed)).status).toBe(403)
  })
})
