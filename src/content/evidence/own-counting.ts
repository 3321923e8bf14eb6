import type { OwnCountingRules } from '#core/evidence/own/own-outcome.ts'
import { commonPractice, houseJudgementOnly } from '../follow-up/provenance.ts'
import { yearLookFromDay } from './year-look.ts'

/**
 * How our own ears are counted. No publication gives these days; the published series mostly do not say theirs, so our
 * count and a published one never mean quite the same thing, and the page of our figures says so.
 */
export const ownCounting: OwnCountingRules = {
  nerveFromHours: { value: 24, ...houseJudgementOnly, where: 'A local anaesthetic block has ended by then.' },
  earlyUntilDay: { value: 30, ...houseJudgementOnly },
  woundFromDay: { value: 10, ...commonPractice, where: 'Sutures come out at 10 to 14 days.' },
  recoveredFromDay: { value: 14, ...houseJudgementOnly },
  lastingFromDay: { value: 180, ...houseJudgementOnly },
  deathUntilDay: { value: 14, ...houseJudgementOnly },
  yearFromDay: { value: 365, ...commonPractice, where: 'The status after twelve months.' },
  deathWithinDays: {
    value: 90,
    ...houseJudgementOnly,
    where: 'A tract that came before a death heard of later would not be known.',
  },
  followedEnough: {
    value: 10,
    ...houseJudgementOnly,
    where: 'With fewer, one ear moves the share by more than ten of 100.',
  },
  shownFrom: { value: 20, ...houseJudgementOnly },
  // Last, as in the data of a frozen year, which began without it.
  yearLookFromDay,
}
