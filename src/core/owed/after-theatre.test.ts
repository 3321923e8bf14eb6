import { describe, expect, it } from 'vitest'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { owedInEnglish } from '#content/wording/owed.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { fileOf } from './files-for-tests.ts'
import { owedOf } from './owed.ts'
import { sayOwed } from './owed-wording.ts'

const make = entryMaker()
const subject = { kind: 'operation', animal: 'animal-1', operation: 'operation-1' } as const
const stamp = (at: string, checkpoint: string) =>
  make({ kind: 'theatre-stamp', at, subject, body: { checkpoint, answer: 'done', detail: {}, text: null } })
const booking = make({ kind: 'booking', subject })
const cut = stamp('2026-03-04T10:00:00.000Z', 'incision')
const out = stamp('2026-03-04T11:30:00.000Z', 'tube-out')

function owed(what: string, ...entries: readonly Entry[]) {
  const made = owedOf(fileOf([booking, cut, ...entries]), procedures, { rules: owedRules })
  const open = made.owed.filter((item) => item.what === what)
  return { open, ended: made.closed.filter(({ item }) => item.what === what).map(({ because }) => because) }
}

describe('an operation that nobody signed out', () => {
  const count = (when: 'before' | 'final', at: string) =>
    make({
      kind: 'count',
      at,
      subject,
      body: { when, items: [{ what: 'swabs', expected: 20, found: 20 }], throatPack: when === 'final' ? 'out' : 'in' },
    })
  const side = make({
    kind: 'pause-item',
    at: '2026-03-04T11:20:00.000Z',
    subject,
    body: {
      pause: 'before-leaving',
      item: 'procedure-and-side-done',
      answer: 'yes',
      because: null,
      spokenBy: 'person-surgeon',
      ledBy: null,
    },
  })
  const whole = [count('before', '2026-03-04T09:50:00.000Z'), count('final', '2026-03-04T11:00:00.000Z'), side]

  it('is owed from the moment the tube is out, with the points that stand against it', () => {
    expect(owed('sign-out').open).toEqual([])
    const [item] = owed('sign-out', out).open
    expect(item).toMatchObject({ dueBy: '2026-03-04T11:30:00.000Z', side: 'LEFT', who: 'surgeon' })
    expect(item && sayOwed(item, owedInEnglish)).toMatchObject({
      what: 'Sign out the operation, LEFT ear',
      why: expect.stringContaining('Points that stand against it: 4.'),
    })
  })

  it('is settled by the sign-out, and owed again when something against it arrives', () => {
    const signed = stamp('2026-03-04T11:25:00.000Z', 'signed-out')
    expect(owed('sign-out', out, ...whole, signed)).toEqual({ open: [], ended: ['settled'] })
    const again = count('final', '2026-03-04T11:05:00.000Z')
    const wrong = { ...again, body: { ...(again.body as object), throatPack: 'in' } as typeof again.body }
    expect(owed('sign-out', out, ...whole, signed, wrong).open[0]?.why).toEqual([
      { code: 'signed-out-in-doubt', about: { points: '1' } },
    ])
  })

  it('ends undone when the animal has gone home', () => {
    const home = make({ kind: 'discharge', at: '2026-03-05T10:00:00.000Z' })
    expect(owed('sign-out', out, home)).toEqual({ open: [], ended: ['too-late'] })
  })
})

describe('an owner who has not heard of an emergency', () => {
  const called = stamp('2026-03-04T10:20:00.000Z', 'emergency-on-bleeding-1')
  const tell = (about: string, at: string, who: 'owner' | 'referring-vet' = 'owner') =>
    make({ kind: 'told', at, body: { about, who, contact: 'contact-1', by: 'phone', text: null } })
  const what = 'owner-about-emergency'

  it('is told the same day, and the item says what was called', () => {
    expect(owed(what).open).toEqual([])
    const [item] = owed(what, called).open
    expect(item).toMatchObject({ way: 'call', dueFrom: '2026-03-04T10:20:00.000Z', dueBy: '2026-03-04T23:59:59.000Z' })
    expect(item && sayOwed(item, owedInEnglish).why).toBe('Called in theatre: Bleeding.')
  })

  it('is told by an entry about that emergency to the owner, not by any other', () => {
    expect(owed(what, called, tell(cut.id, '2026-03-04T13:00:00.000Z')).open).toHaveLength(1)
    expect(owed(what, called, tell(called.id, '2026-03-04T13:00:00.000Z', 'referring-vet')).open).toHaveLength(1)
    expect(owed(what, called, tell(called.id, '2026-03-04T13:00:00.000Z'))).toEqual({ open: [], ended: ['settled'] })
    expect(owed(what, called, tell(called.id, '2026-03-05T09:00:00.000Z')).ended).toEqual(['settled-late'])
  })

  it('is told again of an emergency that came after the telling', () => {
    const later = stamp('2026-03-04T14:00:00.000Z', 'emergency-on-airway-1')
    const told = tell(called.id, '2026-03-04T13:00:00.000Z')
    expect(owed(what, called, told, later).open).toHaveLength(1)
    expect(owed(what, called, told, later, tell(later.id, '2026-03-04T15:00:00.000Z')).open).toEqual([])
  })
})
