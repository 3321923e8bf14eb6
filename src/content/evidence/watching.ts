import type { OwnOutcome } from '#core/evidence/own/own-outcome.ts'
import type { WatchRules } from '#core/results/watch.ts'
import { houseJudgementOnly } from '../follow-up/provenance.ts'

/** The outcomes that are watched in their order: what stays, and what comes late. */
export const watchedOutcomes = [
  'facial_nerve_deficit_permanent',
  'deep_recurrence',
  'wound_infection_or_dehiscence',
] as const satisfies readonly OwnOutcome[]

/** The method is published; the figures of its design are ours. What they mean is worked out exactly and stands on the page. */
export const watching: WatchRules = {
  ratio: {
    value: 2,
    sources: ['steiner-2000'],
    where: 'twice the odds, as in the worked example of the method',
    known: 'remembered',
    strength: 'study',
    confidence: 'medium',
    checked: '2026-11-30',
  },
  limit: {
    value: 3.5,
    ...houseJudgementOnly,
    where: 'chosen so that few of a hundred operations end in a false alarm',
  },
  least: { value: 30, ...houseJudgementOnly, where: 'with fewer one event decides' },
  ahead: { value: 100, ...houseJudgementOnly, where: 'a few years of a small clinic' },
}
