import type { QuestionRules, ReportRule } from '#core/questionnaire/questionnaire.ts'
import type { Period } from '#core/time/calendar-day.ts'
import { houseJudgementOnly } from '../follow-up/provenance.ts'
import { earlyHome } from './early-home.ts'
import { months } from './months.ts'
import { twelveMonthsQuestions } from './twelve-months.ts'

const hours = (count: number): Period => ({ count, unit: 'hours' })
const days = (count: number): Period => ({ count, unit: 'days' })
const house = { ...houseJudgementOnly, checked: '2026-11-30' } as const

const today = {
  value: hours(12),
  ...house,
  where: 'rung the same day; no source gives hours for what an owner reports',
} as const
const soon = {
  value: days(2),
  ...house,
  where: 'rung within two days; no source gives days for what an owner reports',
} as const
const thisWeek = { value: days(7), ...house, where: 'another clinic’s record is asked for within a week' } as const
const nextDay = {
  value: days(1),
  ...house,
  where: 'seen by the next day; an owner’s words are no examination',
} as const
const twoDays = { value: days(2), ...house, where: 'seen within two days, as any late event of an ear' } as const

const rule = { call: soon, look: null, phoneNow: false, offers: null } as const satisfies ReportRule

/** When owners are asked what, and what is done about their answers. Windows of the follow-up are the follow-up’s own. */
export const questionRules = {
  all: [earlyHome, months, twelveMonthsQuestions],
  occasions: [
    {
      id: 'early-home',
      questionnaire: 'early-home',
      edition: '1',
      when: {
        kind: 'own',
        window: {
          value: { from: days(7), until: days(28) },
          ...house,
          where: 'weeks 1 to 4 at home; the days are the house’s',
        },
      },
      stillAsked: false,
      triesAbout: 'check',
    },
    {
      id: 'month-3',
      questionnaire: 'months',
      edition: '1',
      when: { kind: 'step', step: 'recheck-3-months' },
      stillAsked: false,
      triesAbout: 'check',
    },
    {
      id: 'month-6',
      questionnaire: 'months',
      edition: '1',
      when: { kind: 'step', step: 'recheck-6-months' },
      stillAsked: false,
      triesAbout: 'check',
    },
    {
      id: 'month-12',
      questionnaire: 'twelve-months',
      edition: '1',
      when: { kind: 'step', step: 'twelve-months' },
      stillAsked: true,
      triesAbout: 'twelve-months',
    },
  ],
  reports: {
    swelling: { call: today, look: twoDays, phoneNow: true, offers: 'swelling' },
    'swelling-gone': { ...rule, look: twoDays, offers: 'swelling' },
    discharge: { call: today, look: twoDays, phoneNow: true, offers: 'draining-tract' },
    'discharge-gone': { ...rule, look: twoDays, offers: 'draining-tract' },
    'wound-open': { call: today, look: nextDay, phoneNow: true, offers: null },
    'touch-hurts': { ...rule, look: twoDays },
    'mouth-hurts': { call: today, look: twoDays, phoneNow: true, offers: 'jaw-pain' },
    'eye-open': { call: today, look: twoDays, phoneNow: false, offers: null },
    'eye-sore': { call: today, look: nextDay, phoneNow: true, offers: null },
    'head-tilt': { call: today, look: twoDays, phoneNow: true, offers: null },
    'not-eating': { call: today, look: nextDay, phoneNow: true, offers: null },
    'medicines-missed': { ...rule, call: today },
    'ear-worse': { ...rule, look: twoDays },
    'treated-elsewhere': { ...rule, call: thisWeek },
  },
  answeredWithin: { value: days(2), ...house, where: 'what an owner writes is read and answered within two days' },
} as const satisfies QuestionRules
