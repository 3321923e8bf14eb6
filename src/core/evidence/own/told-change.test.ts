import { describe, expect, it } from 'vitest'
import { ownCounting } from '#content/evidence/own-counting.ts'
import { evidenceRules } from '#content/evidence/prior.ts'
import { studies } from '#content/studies/index.ts'
import { oddsInEnglish } from '#content/wording/odds.ts'
import { toldInEnglish } from '#content/wording/told.ts'
import type { OwnOf } from '../told.ts'
import { toldChanges } from './told-change.ts'

const of = { species: 'dog', procedure: 'teca-lbo' } as const
const english = { odds: oddsInEnglish, told: toldInEnglish }

/** Our own count of deep recurrences by ears. */
const own =
  (events: number, total: number): OwnOf =>
  ({ outcome, unit }) =>
    outcome === 'deep_recurrence' && unit === 'ear'
      ? { events, total, lost: 0, from: null, until: null, asOf: '2027-01-10' }
      : null

const evidence = (ownOf: OwnOf) => ({ studies, ownOf, rules: evidenceRules, shownFrom: ownCounting.shownFrom.value })
const outcomes = ['deep_recurrence', 'facial_nerve_deficit_any'] as const

describe('what an owner would read otherwise', () => {
  it('is said in both sentences, for that outcome and unit alone', () => {
    const changes = toldChanges(of, outcomes, evidence(own(0, 12)), own(1, 12), english)
    expect(changes).toHaveLength(1)
    expect(changes[0]).toMatchObject({ outcome: 'deep_recurrence', unit: 'ear' })
    expect(changes[0]?.before).toContain('of 12 operated ears of dogs, none was followed by')
    expect(changes[0]?.after).toContain('We have counted 12 operated ears of dogs of our own.')
  })

  it('is nothing where the counts are the same', () => {
    expect(toldChanges(of, outcomes, evidence(own(1, 12)), own(1, 12), english)).toEqual([])
  })

  it('says nothing before of what nobody counted until then', () => {
    const [change] = toldChanges(
      of,
      outcomes,
      evidence(() => null),
      own(0, 12),
      english,
    )
    expect(change).toMatchObject({ unit: 'ear', before: null })
  })

  it('warns where the share gets higher although none of ours had it', () => {
    const deaths =
      (total: number): OwnOf =>
      ({ outcome, unit }) =>
        outcome === 'perioperative_death' && unit === 'animal' && total > 0
          ? { events: 0, total, lost: 0, from: null, until: null, asOf: '2027-01-10' }
          : null
    const changed = (total: number) =>
      toldChanges(of, ['perioperative_death'], evidence(deaths(0)), deaths(total), english).filter(
        ({ unit }) => unit === 'animal',
      )
    // Heard before: one study, 1 of 59 dogs. After it what a clinic like ours may expect, which reaches further.
    expect(changed(2)).toMatchObject([{ higherWithoutMore: true }])
    expect(changed(400)).toMatchObject([{ higherWithoutMore: false }])
  })
})
