import { describe, expect, it } from 'vitest'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { owedInEnglish } from '#content/wording/owed.ts'
import { entryMaker, type MakeEntry } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { lateSign } from '#core/journal/kinds/late-sign.ts'
import { vetAnswer } from '#core/journal/kinds/vet-answer.ts'
import { toldSignsOf } from '#core/late/told-signs.ts'
import { answered } from '#core/questionnaire/files-for-tests.ts'
import { fileOf } from './files-for-tests.ts'
import { owedOf } from './owed.ts'
import { sayOwed } from './owed-wording.ts'

/** Wednesday 4 March 2026, 09:00 in London. */
const cut = '2026-03-04T09:00:00.000Z'

function operated(make: MakeEntry): Entry {
  return make({
    kind: 'theatre-stamp',
    at: cut,
    body: { checkpoint: 'incision', answer: 'done', detail: {}, text: null },
  })
}

function booked(make: MakeEntry): Entry {
  const plannedFor = { at: cut, zone: 'Europe/London', precision: 'minute', by: 'person' } as const
  const who = { surgeon: 'person-surgeon', anaesthetist: null, agreement: null }
  return make({
    kind: 'booking',
    at: '2026-02-20T10:00:00.000Z',
    body: { side: 'LEFT', procedure: 'teca-lbo', plannedFor, ...who },
  })
}

function rang(make: MakeEntry, at: string, text: string): Entry {
  const call = { contact: 'contact-1', direction: 'they-called', channel: 'phone', reached: 'yes' } as const
  return make({ kind: 'call', at, body: { ...call, about: 'worry', text } })
}

const owedIn = (entries: readonly Entry[]) =>
  owedOf(fileOf(entries), procedures, { rules: owedRules }).owed.filter(({ what }) => what === 'late-sign-to-settle')

const closedIn = (entries: readonly Entry[]) =>
  owedOf(fileOf(entries), procedures, { rules: owedRules }).closed.filter(
    ({ item }) => item.what === 'late-sign-to-settle',
  )

const said = (told: Entry, belongs: 'none' | 'unsure' | 'not-looked'): BodyOf<'late-sign'> => ({
  ...lateSign.example,
  told: told.id,
  belongs,
  chosen: null,
})

describe('a late sign told on the telephone', () => {
  it('is owed in the file of the operated animal until somebody says to which ear it belongs', () => {
    const make = entryMaker()
    const file = [booked(make), operated(make)]
    const call = rang(make, '2027-05-10T10:00:00.000Z', 'There is a swelling below the ear.')
    const [one] = owedIn([...file, call])
    expect(one).toMatchObject({
      id: `late-sign-to-settle:${call.id}`,
      who: 'surgeon',
      dueBy: '2027-05-12T10:00:00.000Z',
    })
    if (!one) throw new Error('Nothing is owed.')
    const words = sayOwed(one, owedInEnglish)
    expect(words.what).toBe('Say to which operated ear it belongs: swelling')
    expect(words.why).toContain('Told on 10 May 2027, 11:00: swelling.')
    const none = make({ kind: 'late-sign', at: '2027-05-10T12:00:00.000Z', body: said(call, 'none') })
    expect(owedIn([...file, call, none])).toEqual([])
    expect(closedIn([...file, call, none])).toMatchObject([{ because: 'settled', by: none.id }])
  })

  it('is not owed while the ear heals, nor where a late event of the file stands already', () => {
    const make = entryMaker()
    const file = [booked(make), operated(make)]
    expect(owedIn([...file, rang(make, '2026-04-02T22:00:00.000Z', 'Swollen.')])).toEqual([])
    const call = rang(make, '2026-04-03T10:00:00.000Z', 'Swollen.')
    expect(owedIn([...file, call])).toHaveLength(1)
    expect(owedIn([...file, call, make({ kind: 'late-event', at: '2026-04-03T11:00:00.000Z' })])).toEqual([])
  })

  it('is owed by the surgeon when nobody was sure, by the desk when nobody could look, also in a new file', () => {
    const make = entryMaker()
    const told = make({ kind: 'referral', at: '2027-05-10T10:00:00.000Z' })
    expect(owedIn([told])).toEqual([])
    const unsure = make({ kind: 'late-sign', at: '2027-05-10T10:05:00.000Z', body: said(told, 'unsure') })
    expect(owedIn([told, unsure])).toMatchObject([{ who: 'surgeon', dueBy: '2027-05-12T10:05:00.000Z' }])
    const away = make({ kind: 'late-sign', at: '2027-05-10T10:05:00.000Z', body: said(told, 'not-looked') })
    expect(owedIn([told, away])).toMatchObject([{ who: 'desk' }])
    const later = make({
      kind: 'late-sign',
      at: '2027-05-11T10:00:00.000Z',
      body: said(told, 'none'),
      supersedes: [unsure.id],
      reason: 'The chip was read again.',
    })
    expect(owedIn([told, unsure, later])).toEqual([])
  })

  it('is settled by an answer for the call also after the call was amended, and owed on when the animal has died', () => {
    const make = entryMaker()
    const file = [booked(make), operated(make)]
    const call = rang(make, '2027-05-10T10:00:00.000Z', 'There is a swelling.')
    const none = make({ kind: 'late-sign', at: '2027-05-10T12:00:00.000Z', body: said(call, 'none') })
    const amended = { ...rang(make, '2027-05-10T10:00:00.000Z', 'There is a swelling, since Monday.') }
    const corrected = { ...amended, supersedes: [call.id], reason: 'More was said.' }
    expect(owedIn([...file, call, none, corrected])).toEqual([])
    const death = make({ kind: 'death', at: '2027-05-11T10:00:00.000Z' })
    expect(owedIn([...file, call, death])).toHaveLength(1)
  })
})

describe('a late sign told in writing', () => {
  const at = '2027-03-01T10:00:00.000Z'
  const told = (entries: readonly Entry[]) => toldSignsOf(fileOf(entries).theCase, owedRules.lateSigns)

  it('by the owner in the answers is asked about with the ear and the words that were shown, until somebody says', () => {
    const make = entryMaker()
    const file = [booked(make), operated(make)]
    const sent = answered(make, at, { 'swelling.LEFT': 'yes', 'discharge.LEFT': 'no', 'ear-now.RIGHT': 'better' })
    expect(owedIn([...file, sent])).toMatchObject([{ id: `late-sign-to-settle:${sent.id}`, who: 'surgeon' }])
    const [sign] = told([...file, sent])
    expect([sign?.signs, sign?.side]).toEqual([['swelling'], 'LEFT'])
    const none = make({ kind: 'late-sign', at: '2027-03-01T12:00:00.000Z', body: said(sent, 'none') })
    expect(owedIn([...file, sent, none])).toEqual([])
  })

  it('in words of the owner’s own counts too, in either language; “no” and “I cannot tell” are no sign', () => {
    const make = entryMaker()
    const own = (text: string) => told([answered(make, at, { 'anything-else': text })]).flatMap(({ signs }) => signs)
    expect(own('A hole that weeps.')).toEqual(['draining-tract'])
    expect(own('Tiene un bulto.')).toEqual(['swelling'])
    expect(own('He plays again.')).toEqual([])
    const quiet = answered(make, at, {
      'swelling.LEFT': 'no',
      'discharge.RIGHT': 'cannot-tell',
      'touch.LEFT': 'sometimes',
    })
    expect(told([quiet])).toEqual([])
  })

  it('by the referring practice on its short form is owed in the file of the operated animal', () => {
    const make = entryMaker()
    const sent = make({
      kind: 'vet-answer',
      at,
      author: { kind: 'referring-vet', contact: 'contact-vet' },
      body: { ...vetAnswer.example, text: 'An abscess below the ear.' },
    })
    expect(owedIn([booked(make), operated(make), sent])).toMatchObject([{ about: { sign: 'abscess' } }])
    expect(owedIn([sent])).toEqual([])
  })
})
