import type { ReasonGroup } from '../animal/main-reason.ts'
import { countsByReason } from '../evidence/own/by-reason.ts'
import { countEvery, type OwnCount } from '../evidence/own/count-own.ts'
import type { OperatedEar } from '../evidence/own/operated-ear.ts'
import type { OwnCountingRules, OwnOutcome } from '../evidence/own/own-outcome.ts'
import type { CountUnit } from '../evidence/study.ts'
import { hashText } from '../journal/canonical.ts'
import { type BlinkRecovery, blinkRecovery } from '../results/blink-recovery.ts'
import { type TractTimes, tractTimes } from '../results/tract-times.ts'
import { type Watch, watchOf } from '../results/watch.ts'
import { earsOfFrozen, groupsOfSeries, rulesOfFrozen, watchingOfFrozen } from './ears-of-frozen.ts'
import { operationsIn } from './freeze-year.ts'
import type { FrozenYear } from './frozen-year.ts'
import { countsReasons } from './method.ts'
import { type Ends, rateOf, six, type YearlyRate } from './yearly-rate.ts'

/** How much is known of one operation in one species: it comes first. */
export type Completeness = {
  readonly ears: number
  readonly animals: number
  readonly anaesthetics: number
  /** Somebody said at least once how the ear was. */
  readonly heardOf: number
  readonly died: number
  /** Of ears that were operated a year ago: known, and not known, how it ended. */
  readonly knownAfterYear: number
  readonly lostAfterYear: number
  readonly notYetDue: number
}

/** The ears that were operated for one reason, with their rates; never of animals or operations. */
export type YearlyReason = {
  readonly reason: ReasonGroup
  readonly ears: number
  readonly rates: readonly YearlyRate[]
}

export type YearlyTracts = Pick<TractTimes, 'ears' | 'animals' | 'events' | 'died' | 'at' | 'mean' | 'steps'>

export type YearlyWatch = { readonly outcome: OwnOutcome; readonly unit: CountUnit; readonly known: number } & (
  | { readonly kind: 'too-few' | 'nothing-expected' }
  | {
      readonly kind: 'watched'
      readonly events: number
      readonly risk: number
      readonly falseAlarm: number
      readonly rightAlarm: number
      readonly line: readonly number[]
      /** Places of the results with which the line reached its limit; the first result is 1. */
      readonly signals: readonly number[]
    }
)

export type YearlyOperation = Pick<OperatedEar, 'species' | 'procedure'> & {
  readonly completeness: Completeness
  readonly rates: readonly YearlyRate[]
  /** Ears by what they were operated for; from method 2 on. */
  readonly byReason?: readonly YearlyReason[]
  readonly tracts: YearlyTracts | null
  readonly blink: BlinkRecovery | null
  readonly watched: readonly YearlyWatch[]
}

/** The report of one year: a pure function of its frozen data. */
export type YearlyReport = {
  readonly report: 'quiet-ear-yearly-report'
  readonly format: 1
  readonly year: number
  readonly lookedAt: string
  readonly method: string
  readonly dataHash: string
  readonly rules: FrozenYear['rules']
  readonly watch: Omit<FrozenYear['watch'], 'series'>
  readonly ears: number
  readonly animals: number
  readonly operations: readonly YearlyOperation[]
}

/**
 * The report of frozen data, with nothing from the journal, the clock or today's content. Shares have six decimals, so
 * that two machines whose last binary digit differs still write the same bytes.
 *
 * @param dataHash of the frozen data, which it is named by
 * @example reportOf(frozen, hash).operations[0]?.rates[0]?.share
 */
export function reportOf(frozen: FrozenYear, dataHash: string): YearlyReport {
  const ears = earsOfFrozen(frozen)
  const rules = rulesOfFrozen(frozen)
  const { series: _, ...watch } = frozen.watch
  return {
    report: 'quiet-ear-yearly-report',
    format: 1,
    year: frozen.year,
    lookedAt: frozen.lookedAt,
    method: frozen.method,
    dataHash,
    rules: frozen.rules,
    watch,
    ears: ears.length,
    animals: new Set(ears.map(({ animal }) => animal)).size,
    operations: operationsIn(ears).map((of) => operationOf(of, ears, rules, frozen)),
  }
}

/** The report as the bytes of its JSON file, and their hash. */
export function reportText(report: YearlyReport): { readonly text: string; readonly hash: string } {
  const text = `${JSON.stringify(report, null, 2)}\n`
  return { text, hash: hashText(text) }
}

type Of = Pick<OperatedEar, 'species' | 'procedure'>

function operationOf(
  of: Of,
  all: readonly OperatedEar[],
  rules: OwnCountingRules,
  frozen: FrozenYear,
): YearlyOperation {
  const ears = all.filter(({ species, procedure }) => species === of.species && procedure === of.procedure)
  const counts = countEvery(of, frozen.outcomes, ears, frozen.lookedAt, rules)
  return {
    ...of,
    completeness: completenessOf(ears, counts),
    rates: counts.map((count) => rateOf(count, rules.shownFrom.value)),
    ...(countsReasons(frozen.method) && {
      byReason: countsByReason(of, ears, frozen.lookedAt, rules, frozen.outcomes).map((one) => ({
        reason: one.reason,
        ears: one.ears,
        rates: one.counts.map((count) => rateOf(count, rules.shownFrom.value)),
      })),
    }),
    tracts: tractsOf(ears, rules),
    blink: blinkRecovery(ears),
    watched: frozen.watch.series
      .filter(({ species, procedure }) => species === of.species && procedure === of.procedure)
      .map((one) => watchedOf(one, frozen)),
  }
}

/**
 * How complete the knowledge of some ears of one operation is, with their counts at hand.
 *
 * @example completenessOf(ears, counts).lostAfterYear
 */
export function completenessOf(ears: readonly OperatedEar[], counts: readonly OwnCount[]): Completeness {
  const year = counts.find(({ question }) => question.outcome === 'resolution_or_improved' && question.unit === 'ear')
  return {
    ears: ears.length,
    animals: new Set(ears.map(({ animal }) => animal)).size,
    anaesthetics: new Set(ears.map(({ session }) => session)).size,
    heardOf: ears.filter(({ followedUntil }) => followedUntil !== null).length,
    died: ears.filter(({ died }) => died !== null).length,
    knownAfterYear: year?.total ?? 0,
    lostAfterYear: year?.lost ?? 0,
    notYetDue: year?.notYetDue ?? 0,
  }
}

function tractsOf(ears: readonly OperatedEar[], rules: OwnCountingRules): YearlyTracts | null {
  const found = tractTimes(ears, { enough: rules.followedEnough.value, deathWithinDays: rules.deathWithinDays.value })
  if (found.kind === 'refusal') return null
  const { ears: count, animals, events, died, at, mean, steps } = found.answer
  const pair = (interval: Ends | null): Ends | null => interval && [six(interval[0]), six(interval[1])]
  return {
    ears: count,
    animals,
    events,
    died,
    at: at.map((one) =>
      one.kind === 'too-few'
        ? one
        : {
            ...one,
            share: six(one.share),
            interval: pair(one.interval),
            upTo: one.upTo === null ? null : six(one.upTo),
            withoutDeaths: six(one.withoutDeaths),
          },
    ),
    mean: mean && { months: mean.months, days: six(mean.days), error: six(mean.error) },
    steps: steps.map((step) => ({
      ...step,
      share: step.share === null ? null : six(step.share),
      interval: pair(step.interval),
    })),
  }
}

function watchedOf(one: FrozenYear['watch']['series'][number], frozen: FrozenYear): YearlyWatch {
  const { species, procedure, unit, outcome, expected } = one
  const question = { species, procedure, unit, outcome }
  const found = watchOf(
    question,
    groupsOfSeries(one),
    () => (expected === null ? null : Number(expected)),
    watchingOfFrozen(frozen),
  )
  return saidOfWatch(found)
}

function saidOfWatch(found: Watch): YearlyWatch {
  const { outcome, unit } = found.question
  const about = { outcome, unit, known: found.known }
  if (found.kind !== 'watched') return { ...about, kind: found.kind }
  return {
    ...about,
    kind: 'watched',
    events: found.points.filter(({ event }) => event).length,
    risk: six(found.risk),
    falseAlarm: six(found.falseAlarm),
    rightAlarm: six(found.rightAlarm),
    line: found.points.map(({ value }) => six(value)),
    signals: found.points.flatMap(({ signal }, place) => (signal ? [place + 1] : [])),
  }
}
