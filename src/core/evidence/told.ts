import { type Conflict, conflictWith } from '../stats/predictive/conflict.ts'
import { type Predictive, predictiveOf } from '../stats/predictive/predictive.ts'
import type { Priors } from '../stats/predictive/priors.ts'
import type { ShareDistribution } from '../stats/predictive/share-distribution.ts'
import { summaryOf } from '../stats/predictive/summary.ts'
import { robustly, updatedBy } from '../stats/predictive/update.ts'
import type { Count, Interval } from '../stats/proportion-interval.ts'
import { type OwnRate, ownRateOf } from './own/own-rate.ts'
import { foundIn, type Published, type PublishedCount, type PublishedQuestion, publishedFor } from './published.ts'
import { type Quoted, quotedFor } from './quoted.ts'
import type { Sourced } from './sourced.ts'
import { countUnits, type Study } from './study.ts'

export type EvidenceRules = {
  readonly priors: Sourced<Priors>
  /** Of the weak part that lets own results contradict the studies; it lies about the published mean. */
  readonly weakWeight: Sourced<number>
}

/** Our own count as a person approved it. */
export type OwnApproved = {
  readonly events: number
  readonly total: number
  readonly lost: number
  readonly from: string | null
  readonly until: string | null
  readonly asOf: string
}

/** A share in three numbers, on 0–1. */
export type Middle = { readonly mean: number; readonly median: number; readonly interval: Interval }

/** What a clinic should expect that nobody has counted yet. */
export type Expected = {
  readonly predictive: Predictive
  readonly studies: number
  readonly total: number
}

/** What is known after our own approved count. */
export type Updated = Middle & {
  /** Of the weak part; far above the rule's own weight, our results and the studies contradict each other. */
  readonly weakWeight: number
  readonly distribution: ShareDistribution
  /** Our results lie so far off that the answer cannot be computed; then nothing is said of it. */
  readonly trusted: boolean
}

/** One outcome in one unit: what studies say, what we counted, and what both together say. */
export type Told = {
  readonly published: Published
  /** Null where no study answers, or one sentence can be read in two ways: neither is a base to compute from. */
  readonly expected: Expected | null
  readonly own: OwnApproved | null
  readonly ownRate: OwnRate
  readonly updated: Updated | null
  /** What reviews quote; only where no study answers. */
  readonly quoted: readonly Quoted[]
}

export type OwnOf = (question: PublishedQuestion) => OwnApproved | null

/**
 * What owners are told of one outcome: published counts, joined with our own as they were last approved. Our own never
 * stand in for the studies and are never hidden by being few: below the house minimum only our separate rate is withheld.
 *
 * @example toldOf(question, { studies, ownOf, rules: evidenceRules, shownFrom: 20 }).updated?.mean
 */
export function toldOf(
  question: PublishedQuestion,
  about: {
    readonly studies: readonly Study[]
    readonly ownOf: OwnOf
    readonly rules: EvidenceRules
    readonly shownFrom: number
    readonly quoted?: readonly Quoted[]
  },
): Told {
  const published = publishedFor(question, about.studies)
  const own = about.ownOf(question)
  const known = own ?? { events: 0, total: 0, lost: 0 }
  const expected = expectedBy(published, about.rules)
  return {
    published,
    expected,
    own,
    ownRate: ownRateOf(known, about.shownFrom),
    updated: expected && known.total > 0 ? joined(expected, known, about.rules) : null,
    quoted: published.kind === 'unknown' ? quotedFor(question, about.quoted ?? []) : [],
  }
}

/** The same outcome in every unit that studies or we counted, never added; one unknown when nobody counted it. */
export function toldPerUnit(
  question: Omit<PublishedQuestion, 'unit'>,
  about: Parameters<typeof toldOf>[1],
): readonly Told[] {
  const told = countUnits.map((unit) => toldOf({ ...question, unit }, about))
  const counted = told.filter(({ published, own }) => published.kind !== 'unknown' || saysAlone(published, own))
  return counted.length > 0 ? counted : told.filter(({ published }) => published.question.unit === 'animal')
}

/** Of what no study counted, our own ears speak; by animals and operations they would only say it again. */
function saysAlone({ question }: Published, own: OwnApproved | null): boolean {
  return question.unit === 'ear' && own !== null && own.total > 0
}

/** The counts that answer; none for what is unknown or can be read in two ways. */
export function answeringCounts(published: Published): readonly PublishedCount[] {
  return published.kind === 'two-readings' ? [] : foundIn(published)
}

function expectedBy(published: Published, { priors }: EvidenceRules): Expected | null {
  const found = answeringCounts(published)
  if (found.length === 0) return null
  const counts = found.map(({ count }) => count)
  const total = counts.reduce((sum, count) => sum + count.total, 0)
  return { predictive: predictiveBefore(counts, priors.value), studies: found.length, total }
}

/** Published counts do not change while the program runs, and every screen and paper asks for the same ones again. */
const before = new Map<string, Predictive>()

function predictiveBefore(counts: readonly Count[], priors: Priors): Predictive {
  const key = JSON.stringify([counts, priors])
  const known = before.get(key) ?? predictiveOf(counts, priors)
  before.set(key, known)
  return known
}

/** Ours beside theirs, for the surgeon at any number of our own; null where one of them is missing. */
export function conflictOf({ expected, own }: Told): Conflict | null {
  return expected && own && own.total > 0 ? conflictWith(expected.predictive.distribution, own) : null
}

function joined(
  { predictive }: Expected,
  own: { readonly events: number; readonly total: number },
  { weakWeight }: EvidenceRules,
): Updated {
  const prior = robustly(predictive.distribution, { weight: weakWeight.value })
  const updated = updatedBy(prior, { events: own.events, total: own.total })
  const { distribution } = updated
  return {
    ...middleOf(distribution),
    distribution,
    weakWeight: updated.weakWeight,
    trusted: !updated.beyondGrid,
  }
}

/** Mean, median and the middle 95 % of what is known of a share. */
export function middleOf(distribution: ShareDistribution): Middle {
  const { mean, median, interval } = summaryOf(distribution)
  return { mean, median, interval }
}
