import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { triageRules } from '#content/follow-up/triage-rules.ts'
import { triageInEnglish } from '#content/wording/app-triage.ts'
import { redFlags, referral } from '#core/journal/kinds/referral.ts'
import {
  answersOf,
  type RedFlag,
  sayBecause,
  type TriageAnswers,
  triage,
  type Urgency,
  urgencyStanding,
} from './triage.ts'

const asked = (yes: readonly RedFlag[], open: readonly RedFlag[] = []): TriageAnswers => ({
  signs: redFlags.map((sign) => ({
    sign,
    answer: yes.includes(sign) ? 'yes' : open.includes(sign) ? 'not-asked' : 'no',
  })),
  drugAllergy: 'no',
  flatFace: 'no',
  mayFetchRecords: 'yes',
})
const judge = (answers: TriageAnswers) => triage(answers, triageRules)

describe('triage of the first call', () => {
  it('sends a nerve sign today, with the reason in words', () => {
    const found = judge(asked(['head-tilt', 'severe-pain']))
    expect(found).toMatchObject({ suggested: 'today', redFlags: ['head-tilt', 'severe-pain'], askNow: [] })
    expect(sayBecause(found, triageInEnglish)).toBe(
      'Head tilt: a sign of the inner ear or the brain; it must not be booked as routine. Severe pain: pain is treated before it is planned.',
    )
  })

  it('says beside an open nerve sign what is known of flat-faced dogs (Banks 2023: 46 of 81)', () => {
    const found = judge({ ...asked([], ['falling']), flatFace: 'yes' })
    expect(found.because).toMatchObject([{ kind: 'flat-faced', fact: { sources: ['banks-2023'] } }])
    expect(judge({ ...asked([]), flatFace: 'yes' }).because).toEqual([{ kind: 'no-red-flag' }])
  })

  it('suggests routine only when every red flag was asked about', () => {
    expect(judge(asked([])).suggested).toBe('routine')
    const open = judge(asked([], ['severe-pain', 'falling']))
    expect(open).toMatchObject({ suggested: null, atLeast: 'routine' })
    expect(open.askNow).toEqual([
      { kind: 'sign', sign: 'falling', could: 'today' },
      { kind: 'sign', sign: 'severe-pain', could: 'this-week' },
    ])
  })

  it('lists what nobody said at all as to be asked now', () => {
    const found = judge({ signs: [], drugAllergy: 'not-asked', flatFace: 'unknown', mayFetchRecords: 'not-asked' })
    expect(found.askNow.length).toBe(redFlags.length + 3)
    expect(found.suggested).toBeNull()
  })

  it('judges a call that was written down, and leaves the urgency of its author alone', () => {
    const found = judge(answersOf(referral.example, null))
    expect(found).toMatchObject({ redFlags: ['severe-pain'], suggested: null, atLeast: 'this-week' })
    expect(found.askNow.map((ask) => (ask.kind === 'sign' ? ask.sign : ask.kind))).toContain('flat-face')
    expect(urgencyStanding(referral.example.urgency, found)).toMatchObject({ urgency: 'this-week', reason: 'asked' })
  })

  it('suggests today as soon as one sign asks for it, and goes on asking', () => {
    expect(judge(asked(['not-eating'], ['falling']))).toMatchObject({
      suggested: 'today',
      askNow: [{ sign: 'falling' }],
    })
  })
})

const urgency = fc.constantFrom<Urgency>('today', 'this-week', 'routine')
const answer = fc.constantFrom('yes', 'no', 'not-asked')
const answers = fc.tuple(...redFlags.map(() => answer)).map(
  (given): TriageAnswers => ({
    signs: redFlags.map((sign, at) => ({ sign, answer: given[at] ?? 'no' })),
    drugAllergy: 'no',
    flatFace: 'unknown',
    mayFetchRecords: 'no',
  }),
)

describe('the urgency that stands', () => {
  it('is always what a person chose, and another one than suggested asks for a reason', () => {
    fc.assert(
      fc.property(urgency, answers, (chosen, given) => {
        const found = judge(given)
        const stands = urgencyStanding(chosen, found)
        expect(stands.urgency).toBe(chosen)
        expect(stands.reason).toBe(chosen === found.suggested ? 'not-needed' : 'asked')
      }),
    )
  })

  it('never becomes less urgent by one more answer, whichever it is', () => {
    const rank = { today: 0, 'this-week': 1, routine: 2 }
    fc.assert(
      fc.property(answers, fc.nat({ max: redFlags.length - 1 }), answer, (given, at, more) => {
        const before = judge(given)
        fc.pre(given.signs[at]?.answer === 'not-asked')
        const after = judge({
          ...given,
          signs: given.signs.map((one, n) => (n === at ? { ...one, answer: more } : one)),
        })
        expect(rank[after.atLeast]).toBeLessThanOrEqual(rank[before.atLeast])
      }),
    )
  })

  it('is the suggestion while nobody chose, and open while nothing can be suggested', () => {
    expect(urgencyStanding(null, judge(asked(['falling'])))).toMatchObject({ urgency: 'today', reason: 'not-needed' })
    expect(urgencyStanding(null, judge(asked([], ['falling'])))).toMatchObject({ urgency: null, reason: 'open' })
    expect(urgencyStanding('routine', judge(asked(['falling'])))).toMatchObject({ compared: 'later', reason: 'asked' })
  })
})
