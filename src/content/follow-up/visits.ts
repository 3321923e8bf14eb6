import type { FaceLook, FollowUpStep } from '#core/procedures/follow-up.ts'
import type { Period } from '#core/time/calendar-day.ts'
import { commonPractice, houseJudgementOnly } from './provenance.ts'

const hours = (count: number): Period => ({ count, unit: 'hours' })
const days = (count: number): Period => ({ count, unit: 'days' })
const months = (count: number): Period => ({ count, unit: 'months' })

export const firstCall = {
  id: 'first-call',
  way: 'call',
  window: { value: { from: hours(24), until: hours(72) }, ...commonPractice },
} as const satisfies FollowUpStep

export const sutureCheck = {
  id: 'suture-check',
  way: 'visit',
  window: { value: { from: days(10), until: days(14) }, ...commonPractice },
} as const satisfies FollowUpStep

/** The second of two advised wound checks. Which days of week 4 is ours: day 22 to day 28. */
export const woundWeek4 = {
  id: 'wound-week-4',
  way: 'visit',
  window: {
    value: { from: days(22), until: days(28) },
    sources: ['wound-surveillance-framework'],
    where: 'checks at suture removal and in week 4',
    known: 'read',
    strength: 'web',
    confidence: 'medium',
    checked: '2026-11-25',
  },
} as const satisfies FollowUpStep

export const recheckWeeks4To6 = {
  id: 'recheck-4-to-6-weeks',
  way: 'visit',
  window: { value: { from: days(28), until: days(42) }, ...commonPractice },
} as const satisfies FollowUpStep

/** The month is common practice; that the visit may come up to a month later is ours. */
export const recheckMonth3 = {
  id: 'recheck-3-months',
  way: 'visit',
  window: {
    value: { from: months(3), until: months(4) },
    ...houseJudgementOnly,
    sources: ['common-practice', 'house-judgement'],
    where: 'month 3 is common practice, one month of slack is the house',
  },
} as const satisfies FollowUpStep

export const recheckMonth6 = {
  id: 'recheck-6-months',
  way: 'visit',
  window: {
    value: { from: months(6), until: months(7) },
    ...houseJudgementOnly,
    sources: ['common-practice', 'house-judgement'],
    where: 'month 6 is common practice, one month of slack is the house',
  },
} as const satisfies FollowUpStep

export const twelveMonthStatus = {
  id: 'twelve-months',
  way: 'status',
  window: {
    value: { from: months(10), until: months(14) },
    ...commonPractice,
    where: 'twelve months, give or take two',
  },
} as const satisfies FollowUpStep

/** Every step of the year after an operation with a skin wound. */
export const wholeYear = [
  firstCall,
  sutureCheck,
  woundWeek4,
  recheckWeeks4To6,
  recheckMonth3,
  recheckMonth6,
  twelveMonthStatus,
] as const satisfies readonly FollowUpStep[]

/** Face and eye after surgery beside the facial nerve: days 1, 3, 10 to 14 and 28. */
export const faceAndEyeLooks = [
  { id: 'day-1', way: 'here', window: { value: { from: days(1), until: days(1) }, ...commonPractice } },
  { id: 'day-3', way: 'here', window: { value: { from: days(3), until: days(3) }, ...commonPractice } },
  { id: 'day-10-14', way: 'visit', window: { value: { from: days(10), until: days(14) }, ...commonPractice } },
  { id: 'day-28', way: 'visit', window: { value: { from: days(28), until: days(28) }, ...commonPractice } },
] as const satisfies readonly FaceLook[]
