import { describe, expect, it } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { agreement } from '#core/journal/kinds/agreement.ts'
import { booking } from '#core/journal/kinds/booking.ts'
import { fileOf } from '#core/owed/files-for-tests.ts'
import { authorityRefusalsOf, type Claim, givingRefusalsOf } from './authority.ts'

const file = fileOf([entryMaker()({ kind: 'household' })])
const { ceiling } = agreement.example.plan
const owner: Claim = { consentBy: 'contact-1', authority: 'owner', authorised: null, ceiling }
const inWriting = {
  by: 'contact-1',
  how: 'in-writing',
  when: booking.example.plannedFor,
  until: null,
  upTo: null,
  witness: null,
} as const
const friend = (change: object = {}): Claim => ({
  consentBy: 'contact-2',
  authority: 'authorised',
  authorised: { ...inWriting, ...change },
  ceiling,
})
const on = (claim: Claim) => authorityRefusalsOf(claim, file, '2026-03-10')

describe('who may agree', () => {
  it('is the owner whom the household names, or a joint owner, or a guardian', () => {
    expect(on(owner)).toEqual([])
    expect(on({ ...owner, authority: 'guardian' })).toEqual([])
    expect(on({ ...owner, consentBy: 'contact-2' })).toEqual(['not-named-in-household'])
    expect(on({ ...owner, consentBy: 'contact-2', authority: 'joint-owner' })).toEqual(['not-named-in-household'])
  })

  it('is never a sitter, nor somebody else, even one whom the household names', () => {
    expect(on({ ...owner, authority: 'sitter' })).toEqual(['sitter'])
    expect(on({ ...owner, authority: 'somebody-else' })).toEqual(['somebody-else'])
  })

  it('is somebody the owner authorised, within what was authorised', () => {
    expect(on(friend())).toEqual([])
    expect(on({ ...friend(), authorised: null })).toEqual(['authority-not-described'])
    expect(on(friend({ by: 'contact-3' }))).toEqual(['authorised-by-nobody'])
    expect(on(friend({ until: '2026-03-10' }))).toEqual([])
    expect(on(friend({ until: '2026-03-09' }))).toEqual(['authority-ended'])
    expect(on(friend({ upTo: ceiling }))).toEqual([])
    expect(on(friend({ upTo: { ...ceiling, amount: '3399.99' } }))).toEqual(['authority-under-ceiling'])
    expect(on(friend({ upTo: { ...ceiling, currency: 'EUR' } }))).toEqual(['authority-under-ceiling'])
    expect(on(friend({ how: 'by-phone' }))).toEqual(['authority-without-witness'])
    expect(on(friend({ how: 'by-phone', witness: 'person-nurse' }))).toEqual([])
  })

  it('of version 1, "for the owner", is not judged by what nobody asked then', () => {
    expect(on({ ...owner, consentBy: 'contact-2', authority: 'for-the-owner' })).toEqual([])
  })
})

describe('how consent is given', () => {
  const given = (change: object) =>
    givingRefusalsOf({ ...agreement.example, signature: { strokes: [], name: null }, ...change })
  const drawn = { strokes: [{ points: [10, 10, 20, 20] }], name: null }

  it('asks for an adult who can decide', () => {
    expect(given({})).toEqual([])
    expect(given({ soundMind: 'not-assessed' })).toEqual(['sound-mind-not-asked'])
    expect(given({ soundMind: 'no' })).toEqual(['not-of-sound-mind'])
  })

  it('by telephone needs a witness who is not the one who explained', () => {
    expect(given({ given: 'by-phone' })).toEqual(['phone-without-witness'])
    expect(given({ given: 'by-phone', witness: 'person-nurse' })).toEqual([])
    expect(given({ given: 'by-phone', witness: agreement.example.explainedBy })).toEqual(['witness-explained'])
  })

  it('on the screen is drawn, or typed in full before a witness', () => {
    expect(given({ given: 'signed-here' })).toEqual(['not-signed'])
    expect(given({ given: 'signed-here', signature: null })).toEqual(['not-signed'])
    expect(given({ given: 'signed-here', signature: drawn })).toEqual([])
    const typed = { strokes: [], name: 'Amara Okafor' }
    expect(given({ given: 'signed-here', signature: typed })).toEqual(['typed-without-witness'])
    expect(given({ given: 'signed-here', signature: typed, witness: 'person-nurse' })).toEqual([])
  })
})
