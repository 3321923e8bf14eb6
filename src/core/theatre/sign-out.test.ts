import { describe, expect, it } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { type BodyOf, fold } from '#core/journal/fold.ts'
import { signedOut, signOutOf } from './sign-out.ts'
import type { SignOutCode } from './sign-out-codes.ts'

const operation = 'operation-1'
const subject = { kind: 'operation', animal: 'animal-1', operation } as const
const left = { kind: 'ear', animal: 'animal-1', side: 'LEFT' } as const

type Count = BodyOf<'count'>
type Correcting = Partial<Pick<Entry, 'supersedes' | 'reason'>>

/** An operation on the LEFT ear with one labelled pot, equal counts, the pack out and the side confirmed. */
function theatre() {
  const make = entryMaker()
  const entries = new Map<string, Entry>()
  const add = (name: string, entry: Entry) => entries.set(name, entry).get(name) as Entry
  const count = (when: Count['when'], items: Count['items'], throatPack: Count['throatPack']) =>
    make({ kind: 'count', subject, body: { when, items, throatPack } })
  const pot = (label: string, more: Partial<BodyOf<'specimen'>> = {}, wanted: Correcting = {}) =>
    make({
      kind: 'specimen',
      subject: left,
      body: {
        site: 'bulla-on-entry',
        tests: ['aerobic-culture'],
        label,
        laboratory: null,
        antibioticsOnBoard: null,
        expectedBy: null,
        operation,
        ...more,
      },
      ...wanted,
    })
  const stamp = (checkpoint: string, detail: Record<string, string> = {}) =>
    make({ kind: 'theatre-stamp', subject, body: { checkpoint, answer: 'done', detail, text: null } })
  const labelled = (of: Entry, label: string) =>
    stamp(`labelled-${of.id}`, { label, site: 'bulla-on-entry', side: 'LEFT' })
  const pause = (answer: 'yes' | 'no' | 'unknown', item = 'procedure-and-side-done') =>
    make({
      kind: 'pause-item',
      subject,
      body: {
        pause: 'before-leaving',
        item,
        answer,
        because: answer === 'yes' ? null : 'Nobody looked.',
        spokenBy: 'person-surgeon',
        ledBy: null,
      },
    })
  const note = (point: SignOutCode, pointOf: string | null, text: string | null) =>
    make({
      kind: 'incident-note',
      subject,
      body: {
        what: 'count-or-pack',
        during: null,
        reached: null,
        helped: [],
        change: [],
        text,
        emergency: null,
        point,
        pointOf,
      },
    })
  const swabs = (expected: number, found: number) => ({ what: 'swabs', expected, found })
  add('booking', make({ kind: 'booking', subject }))
  add('before', count('before', [swabs(20, 20)], 'in'))
  const first = add('pot', pot('B-1'))
  add('labelled', labelled(first, 'B-1'))
  add('final', count('final', [swabs(20, 20)], 'out'))
  add('side', pause('yes'))
  const out = (...more: readonly Entry[]) => signOutOf(fold([...entries.values(), ...more]), operation)
  const codes = (...more: readonly Entry[]) => out(...more).unsettled.map(({ code, of }) => [code, of])
  return { make, entries, first, count, pot, stamp, labelled, pause, note, swabs, out, codes }
}

describe('an operation can be signed out', () => {
  it('when every pot is labelled, the counts agree, the pack is out and the side was confirmed', () => {
    const { out } = theatre()
    expect(out()).toEqual({ state: 'open', stamp: null, points: [], unsettled: [] })
  })

  it('and is signed out by a stamp, until that is taken back', () => {
    const { out, stamp, make } = theatre()
    const signed = stamp(signedOut)
    expect(out(signed).state).toBe('signed-out')
    const back = make({
      kind: 'withdrawal',
      subject,
      body: { because: 'wrong' },
      withdraws: signed.id,
      reason: 'Too early.',
    })
    expect(out(signed, back).state).toBe('open')
  })

  it('and is in doubt when something against it arrives later', () => {
    const { out, stamp, pot } = theatre()
    const said = out(stamp(signedOut), pot('B-2'))
    expect(said.state).toBe('in-doubt')
    expect(said.stamp).not.toBeNull()
  })
})

describe('an operation cannot be signed out while', () => {
  it('a pot of it has no label', () => {
    const { codes, pot } = theatre()
    expect(codes(pot('B-2'))).toEqual([['specimen-unlabelled', 'B-2']])
    expect(codes(pot('B-2', { operation: null }))).toEqual([])
    expect(codes(pot('B-2', { operation: 'operation-2' }))).toEqual([])
  })

  it('a pot was labelled as something that its entry no longer says', () => {
    const { codes, pot, first, labelled } = theatre()
    const corrected = pot('B-7', {}, { supersedes: [first.id], reason: 'Another number.' })
    expect(codes(corrected)).toEqual([['specimen-unlabelled', 'B-7']])
    expect(codes(corrected, labelled(first, 'B-7'))).toEqual([])
    const later = pot('B-1', { laboratory: 'contact-lab' }, { supersedes: [first.id], reason: 'The laboratory.' })
    expect(codes(later)).toEqual([])
  })

  it('two pots carry one label', () => {
    const { codes, pot, labelled } = theatre()
    const second = pot('B-1')
    expect(codes(second, labelled(second, 'B-1'))).toEqual([['label-twice', 'B-1']])
  })

  it('the count before or the last count is missing, and then nobody said where the pack is', () => {
    const { codes, entries } = theatre()
    entries.delete('before')
    expect(codes()).toEqual([['count-missing', 'before']])
    entries.delete('final')
    expect(codes()).toEqual([
      ['count-missing', 'before'],
      ['count-missing', 'final'],
      ['throat-pack-unsaid', null],
    ])
  })

  it('the last count does not agree; one before closing that was wrong is settled by it', () => {
    const { codes, entries, count, swabs } = theatre()
    expect(codes(count('before-closing', [swabs(20, 19)], 'in'))).toEqual([])
    entries.set('final', count('final', [swabs(20, 19)], 'out'))
    expect(codes()).toEqual([['count-unequal', 'swabs']])
    entries.delete('final')
    expect(codes(count('before-closing', [swabs(20, 19)], 'in'))).toContainEqual(['count-unequal', 'swabs'])
  })

  it('less is expected at the end than was there before, or something is not counted any more', () => {
    const { codes, entries, count, swabs } = theatre()
    entries.set('final', count('final', [swabs(19, 19)], 'out'))
    expect(codes()).toEqual([['count-unequal', 'swabs']])
    entries.set('final', count('final', [{ ...swabs(25, 25), what: 'Swabs ' }], 'out'))
    expect(codes()).toEqual([])
    entries.set('before', count('before', [swabs(20, 20), { what: 'needles', expected: 4, found: 4 }], 'in'))
    expect(codes()).toEqual([['count-item-missing', 'needles']])
  })

  it('the throat pack is in, or one that was in is said never to have been used', () => {
    const { codes, entries, count, swabs } = theatre()
    entries.set('final', count('final', [swabs(20, 20)], 'in'))
    expect(codes()).toEqual([['throat-pack-in', null]])
    entries.set('final', count('final', [swabs(20, 20)], 'none-used'))
    expect(codes()).toEqual([['throat-pack-unsaid', null]])
    entries.set('before', count('before', [swabs(20, 20)], 'none-used'))
    expect(codes()).toEqual([])
  })

  it('the pack is in for the other ear of the same anaesthetic; the last count of both settles it', () => {
    const { codes, entries, make, count, swabs } = theatre()
    const other = { ...subject, operation: 'operation-2' } as const
    const example = make({ kind: 'booking', subject }).body as BodyOf<'booking'>
    const second = make({ kind: 'booking', subject: other, body: { ...example, side: 'RIGHT' } })
    const of = (throatPack: Count['throatPack']) =>
      make({ kind: 'count', subject: other, body: { when: 'final', items: [swabs(20, 20)], throatPack } })
    entries.set('final', count('final', [swabs(20, 20)], 'in'))
    expect(codes(second)).toEqual([['throat-pack-in', null]])
    expect(codes(second, of('out'))).toEqual([])
    const before = of('in')
    entries.set('final', count('final', [swabs(20, 20)], 'out'))
    expect(codes(second, before)).toEqual([])
    expect(codes(second, of('in'))).toEqual([['throat-pack-in', null]])
  })

  it('the side that was done was not confirmed aloud', () => {
    const { codes, entries, pause } = theatre()
    entries.delete('side')
    expect(codes()).toEqual([['side-unconfirmed', null]])
    expect(codes(pause('yes', 'specimens-labelled'))).toEqual([['side-unconfirmed', null]])
    expect(codes(pause('unknown'))).toContainEqual(['side-unconfirmed', null])
  })

  it('an entry of what was done names the other side than the booking', () => {
    const { codes, make } = theatre()
    const example = make({ kind: 'operation-summary', subject }).body as BodyOf<'operation-summary'>
    const other = make({ kind: 'operation-summary', subject, body: { ...example, side: 'RIGHT' } })
    expect(codes(other)).toContainEqual(['side-differs', null])
  })
})

describe('an incident note lets an operation be signed out', () => {
  it('when it names that very point and says why', () => {
    const { out, codes, entries, count, swabs, note, stamp } = theatre()
    entries.set('final', count('final', [swabs(20, 19)], 'out'))
    expect(codes(note('count-unequal', 'swabs', null))).toEqual([['count-unequal', 'swabs']])
    expect(codes(note('count-unequal', 'needles', 'Under the drape.'))).toEqual([['count-unequal', 'swabs']])
    expect(codes(note('throat-pack-in', null, 'Under the drape.'))).toEqual([['count-unequal', 'swabs']])
    const why = note('count-unequal', 'swabs', 'Under the drape; the picture shows none in the animal.')
    expect(codes(why)).toEqual([])
    const said = out(why, stamp(signedOut))
    expect(said.state).toBe('signed-out')
    expect(said.points.map((point) => point.note?.header.id)).toEqual([why.id])
  })
})
