import { ownCounting } from '#content/evidence/own-counting.ts'
import { oddsCommandInEnglish as words } from '#content/wording/odds-command.ts'
import type { Cited } from '#core/evidence/cite.ts'
import type { OutcomeCode } from '#core/evidence/outcome-code.ts'
import { type OwnRate, ownRateOf } from '#core/evidence/own/own-rate.ts'
import { type Middle, middleOf } from '#core/evidence/told.ts'
import { fill } from '#core/outcome/finding.ts'
import { effectiveSize } from '#core/stats/predictive/effective-size.ts'
import { fitBetaMixture } from '#core/stats/predictive/fit-beta-mixture.ts'
import type { ShareDistribution } from '#core/stats/predictive/share-distribution.ts'
import { exactInterval, type Interval } from '#core/stats/proportion-interval.ts'

export type Ends = readonly [number, number]

export type OddsAnswer = {
  /** Null for counts that were brought without saying of what. */
  readonly outcome: OutcomeCode | null
  readonly published: {
    readonly mean: number
    readonly median: number
    readonly interval: Ends
    readonly studies: number
    readonly prior: {
      /** For storing and explaining; everything else is computed on the grid. */
      readonly mixture: readonly { readonly w: number; readonly a: number; readonly b: number }[]
      /** By the moments: the cautious one. */
      readonly ess: number
      readonly essLocal: number | null
    }
  } | null
  readonly own: {
    readonly events: number
    readonly total: number
    readonly lost: number
    readonly interval: Ends | null
    readonly shown: boolean
    readonly why: string
  } | null
  readonly updated: { readonly mean: number; readonly interval: Ends; readonly weakWeight: number } | null
  readonly conflict: { readonly p: number | null } | null
  readonly say: {
    readonly per: 100
    readonly middle: number | null
    readonly low: number | null
    readonly high: number | null
    readonly sentence: string
  }
  readonly modifiers?: readonly ModifierAnswer[]
  readonly sources: readonly Cited[]
}

export type ModifierAnswer = {
  readonly factor: string
  readonly ratio: number | null
  readonly interval: Ends | null
  readonly from: 'printed' | 'worked-out' | null
  readonly share: { readonly mean: number; readonly interval: Ends } | null
  readonly note: string
  readonly sources: readonly Cited[]
}

export function publishedPart(distribution: ShareDistribution) {
  const { mean, median, interval } = middleOf(distribution)
  const { moment, local } = effectiveSize(distribution)
  const mixture = fitBetaMixture(distribution, 3).mixture.map(({ weight, a, b }) => ({ w: weight, a, b }))
  return { mean, median, interval: endsOf(interval), prior: { mixture, ess: moment, essLocal: local } }
}

export function updatedPart({ mean, interval }: Pick<Middle, 'mean' | 'interval'>, weakWeight: number) {
  return { mean, interval: endsOf(interval), weakWeight }
}

export function ownPart(own: { readonly events: number; readonly total: number; readonly lost?: number | undefined }) {
  const { events, total, lost = 0 } = own
  const rate = ownRateOf({ events, total, lost }, ownCounting.shownFrom.value)
  const exact = exactInterval({ events, total })
  return {
    events,
    total,
    lost,
    interval: exact.kind === 'answer' ? endsOf(exact.answer) : null,
    shown: rate.kind === 'shown' || (rate.kind === 'none-yet' && rate.enough),
    why: sayWhyShown(rate),
  }
}

function sayWhyShown(rate: OwnRate): string {
  switch (rate.kind) {
    case 'nobody':
      return words.own.nobody
    case 'none-yet':
      return fill(words.own['none-yet'], { total: String(rate.total), upTo: String(Math.ceil(100 * rate.upTo)) })
    case 'withheld':
      return fill(words.own.withheld, { total: String(rate.total), from: String(rate.from) })
    case 'shown':
      return words.own.shown
  }
}

export function endsOf({ low, high }: Interval): Ends {
  return [low, high]
}
