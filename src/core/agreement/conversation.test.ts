import { describe, expect, it } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { agreement } from '#core/journal/kinds/agreement.ts'
import { booking } from '#core/journal/kinds/booking.ts'
import { estimate } from '#core/journal/kinds/estimate.ts'
import { household } from '#core/journal/kinds/household.ts'
import { fileOf } from '#core/owed/files-for-tests.ts'
import { beginConversation, plannedEars } from './begin.ts'
import { agreementIn, askedBack, type Conversation } from './conversation.ts'
import { isBound } from './fingerprint.ts'
import type { ToldToday } from './plan-changes.ts'

const answer = { said: 'accepted', by: 'contact-1', on: booking.example.plannedFor } as const
const numbersIn: ToldToday['numbersOf'] = (_, procedure, said) => [
  { procedure, outcome: 'horner_any', unit: 'animal', low: 2, middle: 4, high: 8, said },
]
const place = { zone: 'Europe/London', decimalMark: '.', currency: 'GBP' } as const

function talkOf(
  change: Partial<Conversation>,
  body = { ...estimate.example, answer } as typeof estimate.example,
  language = 'en',
) {
  const make = entryMaker()
  const file = fileOf([
    make({ kind: 'identity' }),
    make({ kind: 'household', body: { ...household.example, language } }),
    make({ kind: 'booking' }),
    make({ kind: 'estimate', body }),
  ])
  const planned = plannedEars(file.theCase)
  const told = { leafletOf: () => 'owner-leaflet 7', numbersOf: numbersIn }
  const talk = { ...beginConversation(file.theCase, 'person-surgeon'), ...change }
  return agreementIn(talk, { file, place, planned, told, today: '2026-03-05' })
}

const taught = Object.fromEntries(askedBack.map((item) => [item, { answer: 'own-words', said: '', again: null }]))
const whole: Partial<Conversation> = {
  consentBy: 'contact-1',
  authority: 'owner',
  soundMind: 'yes',
  resuscitate: 'yes',
  mayExtend: 'phone-first',
  extension: ' The bulla may be opened from below. ',
  photographs: 'no',
  taught,
  given: 'signed-on-paper',
  copy: 'on-paper',
}
const codes = (change: Partial<Conversation>) => talkOf({ ...whole, ...change }).faults.map(({ code }) => code)

describe('the talk', () => {
  it('begins with what the record says and with no answer of the owner', () => {
    const { faults, body } = talkOf({})
    expect(body).toBeNull()
    expect(faults.map(({ part }) => part)).not.toContain('plan')
    expect(faults.map(({ code }) => code)).toEqual([
      'nobody-named',
      'no-authority',
      'sound-mind-not-asked',
      'no-resuscitation-wish',
      'no-extension-wish',
      'no-photograph-wish',
      'not-asked-back',
      'no-way-given',
      'no-copy',
    ])
  })

  it('keeps the numbers as the language of its plan says them', () => {
    const { body } = talkOf(whole, undefined, 'es-MX')
    expect(body?.plan).toMatchObject({ language: 'es-MX', numbers: [{ said: 'es-MX' }] })
  })

  it('makes an agreement bound to its plan, with ceiling and edition of the accepted estimate', () => {
    const { faults, body } = talkOf(whole)
    expect(faults).toEqual([])
    if (!body) throw new Error('Nothing was made.')
    expect(agreement.body.parse(body)).toEqual(body)
    expect(isBound(body)).toBe(true)
    expect(body.plan).toMatchObject({
      ceiling: estimate.example.ceiling,
      leaflet: 'owner-leaflet 7',
      extension: 'The bulla may be opened from below.',
    })
    expect(body.estimate).toMatchObject({ low: { amount: '2040.50' }, high: { amount: '2610.75' } })
    expect(body.estimate.entry).toMatch(/^[0-9a-f-]{36}$/)
  })

  it('waits for the answer to the estimate: silence is not a yes', () => {
    expect(talkOf(whole, { ...estimate.example, answer: null }).faults).toEqual([
      { part: 'estimate', code: 'estimate-not-accepted' },
    ])
  })

  it('asks what was said where something is not clear yet', () => {
    const notYet = { ...taught, collar: { answer: 'not-yet', said: ' ', again: null } as const }
    expect(codes({ taught: notYet })).toEqual(['said-what'])
    expect(codes({ taught: { ...taught, collar: { ...notYet.collar, said: 'Off at night.' } } })).toEqual([])
  })

  it('can be read through before it is signed, and is not kept before', () => {
    const { faults, body } = talkOf({ ...whole, given: 'signed-here' })
    expect(faults).toEqual([{ part: 'signature', code: 'not-signed' }])
    expect(body?.signature).toBeNull()
    expect(codes({ given: 'signed-here', strokes: [[1, 2, 3, 4]] })).toEqual([])
  })

  it('reads how somebody was authorised, and says what cannot be read', () => {
    const authorised = {
      by: 'contact-1',
      how: 'in-writing',
      when: '',
      until: 'soon',
      upTo: 'a lot',
      witness: null,
    } as const
    expect(codes({ authority: 'authorised', authorised })).toEqual([
      'authorised-when',
      'authorised-until',
      'authorised-up-to',
    ])
    const readable = { ...authorised, when: '3 March 2026, 18:30', until: '1 May 2026', upTo: '3000.00' }
    expect(codes({ authority: 'authorised', authorised: readable })).toEqual([])
    expect(codes({ authority: 'authorised', authorised: { ...readable, upTo: '2999.99' } })).toEqual([
      'authority-under-ceiling',
    ])
  })
})
