import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { painScales } from '#content/scores/pain-scales.ts'
import type { OwedRules } from '#core/procedures/follow-up.ts'
import type { Period } from '#core/time/calendar-day.ts'
import { quantity } from '#core/units/quantity.ts'
import { ownCounting } from '../evidence/own-counting.ts'
import { questionRules } from '../questionnaires/question-rules.ts'
import { costRules } from './cost-rules.ts'
import { lateEventWithin, lateSignRules } from './late-signs.ts'
import { commonPractice, houseJudgementOnly } from './provenance.ts'
import { beforeTheatre } from './theatre-tests.ts'
import { wardRules } from './ward-rules.ts'

const hours = (count: number): Period => ({ count, unit: 'hours' })
const days = (count: number): Period => ({ count, unit: 'days' })
const months = (count: number): Period => ({ count, unit: 'months' })

const eyeTeaching = {
  sources: ['eye-care-texts'],
  known: 'remembered',
  strength: 'textbook',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const blockHouse = {
  ...houseJudgementOnly,
  sources: ['house-judgement', 'auricular-block-cadavers'],
  where: 'the facial nerve was stained three times in the cadavers; the hours are the house’s',
} as const

const seenHouse = {
  ...houseJudgementOnly,
  where: 'counted from the first call, also at night; no source gives the hours of “today” and “this week”',
} as const

const practiceFasting = {
  sources: ['fasting-practice-page'],
  known: 'read',
  strength: 'web',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

/** When things fall due that belong to every procedure: eyes at risk, results, the day before, late events. */
export const owedRules = {
  referral: {
    today: { value: { from: hours(0), until: hours(12) }, ...seenHouse },
    'this-week': { value: { from: days(0), until: days(7) }, ...seenHouse },
    routine: {
      value: { from: days(7), until: days(14) },
      ...houseJudgementOnly,
      where: 'nobody is forgotten after a first call; a week or two is the house’s',
    },
  },
  face: {
    thenEvery: { value: months(1), ...commonPractice, where: 'monthly until normal' },
    atRiskAgain: { value: days(7), ...eyeTeaching, where: 'no blink or tear test below 10: weekly after the ward' },
    atRiskLimit: { value: days(14), ...houseJudgementOnly, where: 'an eye at risk is never unseen for two weeks' },
    lowTears: { value: quantity('10', 'mm/min'), ...eyeTeaching, confidence: 'high', where: 'below 10 is low' },
    normalTears: {
      value: quantity('15', 'mm/min'),
      sources: ['zukureview-tear-test'],
      known: 'read',
      strength: 'web',
      confidence: 'medium',
      checked: '2026-11-25',
    },
    lubricate: {
      value: 'Gel every one to two hours while awake, ointment every four to six hours and for the night.',
      ...eyeTeaching,
    },
  },
  /** The same hours from which on our results count a weak face. */
  blockOver: { ...ownCounting.nerveFromHours, value: hours(ownCounting.nerveFromHours.value) },
  blockLasts: {
    lidocaine: { value: hours(2), ...blockHouse },
    bupivacaine: { value: hours(8), ...blockHouse },
  },
  results: {
    culture: { value: { from: days(2), until: days(5) }, ...commonPractice },
    histology: { value: { from: days(3), until: days(10) }, ...commonPractice },
    cytology: {
      value: { from: days(0), until: days(0) },
      ...commonPractice,
      where: 'read within minutes, in the clinic',
    },
    readWithin: { value: days(1), ...houseJudgementOnly },
    changeWithin: { value: days(1), ...houseJudgementOnly },
    ownerToldWithin: { value: days(1), ...houseJudgementOnly },
    vetToldWithin: { value: days(3), ...houseJudgementOnly },
  },
  painScales,
  ward: wardRules,
  secondName: dosingRules.secondNameWithin,
  signOut: {
    value: 'Count, specimens and what was done are confirmed aloud before anybody leaves.',
    sources: ['who-2008-surgical-checklist'],
    known: 'remembered',
    strength: 'guideline',
    confidence: 'high',
    checked: '2026-11-29',
  },
  emergencyTold: {
    value: 'The owner hears of an emergency the same day, plainly, from somebody who was there.',
    ...houseJudgementOnly,
    where: 'the same day; no source read gives hours',
    checked: '2026-11-29',
  },
  before: {
    baseline: {
      value:
        'Face, eye and balance are looked at before any sedative: without it a weak face cannot be told from damage.',
      ...commonPractice,
      sources: ['common-practice', 'hartrum-2025'],
    },
    consent: { value: 'Consent is bound to side, procedure and surgeon.', ...commonPractice },
    secondCheck: { value: 'A second person works the doses out again.', ...commonPractice },
    tests: beforeTheatre,
    weightNotOlderThan: { value: hours(24), ...commonPractice, where: 'weighed within 24 hours of anaesthesia' },
    fasting: {
      grown: {
        value: { from: hours(4), until: hours(6) },
        ...practiceFasting,
        where: 'agrees with AAHA 2020 as remembered',
      },
      youngOrSmall: {
        value: { belowWeeks: 8, below: quantity('2', 'kg'), span: { from: hours(1), until: hours(2) } },
        ...practiceFasting,
      },
      exceptions: [
        {
          value:
            'a diabetic one goes 2 to 4 hours without food, with half its insulin, and one that brings food up again needs hours of its own: settle both before.',
          ...practiceFasting,
        },
      ],
      disagrees: [
        {
          value: 'No food overnight.',
          sources: ['fasting-older-advice-2017'],
          where: 'older advice that still circulates',
          known: 'read',
          strength: 'web',
          confidence: 'low',
          checked: '2026-11-25',
        },
      ],
    },
  },
  settleWithin: { value: days(1), ...houseJudgementOnly },
  lateEventWithin,
  lateSigns: lateSignRules,
  wishesReadWithin: { value: days(1), ...houseJudgementOnly },
  vetAnswerReadWithin: { value: days(1), ...houseJudgementOnly },
  vetDeathConfirmedWithin: {
    value: hours(4),
    ...houseJudgementOnly,
    where: 'the same half day, so that nobody asks a bereaved owner how the animal is',
  },
  ownerNoteAnsweredWithin: {
    value: days(1),
    ...houseJudgementOnly,
    where: 'told to the owner beside the form; nothing in a note makes it shorter, because no program reads it',
  },
  questions: questionRules,
  costs: costRules,
  politeTries: { value: { tries: 3, channels: 2 }, ...commonPractice },
} as const satisfies OwedRules
