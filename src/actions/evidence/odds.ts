import { evidenceRules } from '#content/evidence/prior.ts'
import { sources } from '#content/sources/index.ts'
import { oddsInEnglish } from '#content/wording/odds.ts'
import { oddsCommandInEnglish as words } from '#content/wording/odds-command.ts'
import { cite } from '#core/evidence/cite.ts'
import { endWords, perHundred, rounded, wholeOfHundred } from '#core/evidence/say-published.ts'
import { middleOf } from '#core/evidence/told.ts'
import { fill } from '#core/outcome/finding.ts'
import { conflictWith } from '#core/stats/predictive/conflict.ts'
import { predictiveOf } from '#core/stats/predictive/predictive.ts'
import { robustly, updatedBy } from '#core/stats/predictive/update.ts'
import type { Interval } from '#core/stats/proportion-interval.ts'
import { readInput } from '../input.ts'
import { type Ends, type OddsAnswer, ownPart, publishedPart, updatedPart } from './odds-answer.ts'
import { publishedAnswers } from './odds-published.ts'
import { publishedOdds, type RawOdds, rawOdds } from './odds-request.ts'

/**
 * What to expect of one outcome from counts, or of every outcome of an operation from the published studies, joined with
 * own counts.
 *
 * @example odds({ studies: [{ events: 23, total: 107 }], own: { events: 0, total: 12 } }).updated?.mean
 */
export function odds(input: unknown): OddsAnswer | { readonly outcomes: readonly OddsAnswer[] } {
  const isRaw = typeof input === 'object' && input !== null && 'studies' in input
  if (isRaw) return rawAnswer(readInput(rawOdds, input))
  return { outcomes: publishedAnswers(readInput(publishedOdds, input)) }
}

function rawAnswer(request: RawOdds): OddsAnswer {
  const { priors, weakWeight } = evidenceRules
  const predictive = predictiveOf(request.studies, {
    mu: request.muPrior ?? priors.value.mu,
    tauScale: request.tauPrior?.scale ?? priors.value.tauScale,
  })
  const { distribution } = predictive
  const own = request.own ?? { events: 0, total: 0 }
  const prior = robustly(distribution, {
    weight: request.robust ?? weakWeight.value,
    shape: request.weak ?? 'about-the-mean',
  })
  const joined = own.total > 0 ? updatedBy(prior, own) : null
  // Own counts so far off that the grid has ended there: no answer is better than a wrong one.
  const beyond = joined?.beyondGrid ?? false
  const updated = beyond ? null : joined && updatedPart(middleOf(joined.distribution), joined.weakWeight)
  const conflict = own.total > 0 ? conflictWith(distribution, own) : null
  const nothing = predictive.studies.length === 0 && !updated
  const published = { ...publishedPart(distribution), studies: predictive.studies.length }
  return {
    outcome: null,
    published,
    own: request.own ? ownPart(request.own) : null,
    updated,
    conflict: conflict && { p: conflict.kind === 'compared' ? conflict.box : null },
    say: nothing
      ? unsaid(words.raw.nothing)
      : beyond
        ? unsaid(words.raw.beyond)
        : updated
          ? rawSay({ middle: updated.mean, interval: updated.interval }, own.total)
          : rawSay({ middle: published.median, interval: published.interval }, null),
    sources: cite([priors, weakWeight], sources),
  }
}

function unsaid(sentence: string) {
  return { per: 100, middle: null, low: null, high: null, sentence } as const
}

function rawSay({ middle, interval: [low, high] }: { middle: number; interval: Ends }, own: number | null) {
  const ends: Interval = { low, high }
  const sentence = fill(own === null ? words.raw.expected : words.raw.updated, {
    middle: perHundred(middle, oddsInEnglish),
    rest: perHundred(1 - middle, oddsInEnglish),
    total: String(own),
    ...endWords(ends, oddsInEnglish),
  })
  return { per: 100, middle: wholeOfHundred(middle), ...rounded(ends), sentence } as const
}
