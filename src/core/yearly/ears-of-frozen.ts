import type { CountedGroup } from '../evidence/own/count-own.ts'
import type { OperatedEar } from '../evidence/own/operated-ear.ts'
import { type OwnCountingRules, ownOutcomes } from '../evidence/own/own-outcome.ts'
import type { Sourced } from '../evidence/sourced.ts'
import type { WatchRules } from '../results/watch.ts'
import { addDays } from '../time/calendar-day.ts'
import type { FrozenRow, FrozenYear } from './frozen-year.ts'

/**
 * Frozen rows as ears that can be counted like any others. The day of operation is none: it lies so long before the day
 * of looking that the same things are due, and every other day stands as far from it as it truly did.
 *
 * @example countOwn(question, earsOfFrozen(frozen), frozen.lookedAt, rulesOfFrozen(frozen))
 */
export function earsOfFrozen({
  rows,
  outcomes,
  lookedAt,
}: Pick<FrozenYear, 'rows' | 'outcomes' | 'lookedAt'>): OperatedEar[] {
  const days = new Map<number, string>()
  const before = (count: number) => {
    const known = days.get(count)
    if (known !== undefined) return known
    const day = addDays(lookedAt, -count)
    days.set(count, day)
    return day
  }
  return rows.map((row) =>
    earOf(row, { known: knownOf(row, outcomes), ofNoSide: ofNoSide(row, outcomes) }, (after) =>
      after === null ? null : before(row.dueDays - after),
    ),
  )
}

/**
 * What was known of a frozen row, outcome by outcome; one that was not asked then is not known.
 *
 * @example knownOf(row, frozen.outcomes).deep_recurrence // null
 */
export function knownOf({ known }: Pick<FrozenRow, 'known'>, outcomes: FrozenYear['outcomes']): OperatedEar['known'] {
  const letters = { y: true, n: false, s: null, '-': null } as const
  const asked = outcomes.map((outcome, place) => [outcome, letters[(known[place] ?? '-') as keyof typeof letters]])
  return { ...nothingKnown, ...Object.fromEntries(asked) }
}

function ofNoSide({ known }: Pick<FrozenRow, 'known'>, outcomes: FrozenYear['outcomes']): OperatedEar['ofNoSide'] {
  return outcomes.filter((_, place) => known[place] === 's')
}

const nothingKnown = Object.fromEntries(ownOutcomes.map((outcome) => [outcome, null])) as OperatedEar['known']

function earOf(
  row: FrozenRow,
  known: Pick<OperatedEar, 'known' | 'ofNoSide'>,
  dayAfter: (days: number | null) => string | null,
): OperatedEar {
  const { species, procedure, side, reason, blinkLostAfterDays, blinkBackAfterDays, blinkLookedAfterDays } = row
  const lostOn = dayAfter(blinkLostAfterDays)
  const lastLookOn = dayAfter(blinkLookedAfterDays)
  return {
    animal: `animal-${row.animal}`,
    operation: `ear-${row.ear}`,
    session: `anaesthetic-${row.anaesthetic}`,
    stream: '',
    species,
    procedure,
    side,
    reason,
    ...known,
    // Not frozen: no figure of a yearly report is counted from them.
    troubles: [],
    on: dayAfter(0) ?? '',
    died: dayAfter(row.diedAfterDays),
    followedUntil: dayAfter(row.followedForDays),
    tractOn: dayAfter(row.tractAfterDays),
    blink: lostOn === null || lastLookOn === null ? null : { lostOn, backOn: dayAfter(blinkBackAfterDays), lastLookOn },
  }
}

/** The rules of counting that held when it was frozen, whatever they are now. */
export function rulesOfFrozen({ rules, lookedAt }: Pick<FrozenYear, 'rules' | 'lookedAt'>): OwnCountingRules {
  // Before it was a rule of its own, a look counted from the day on which the ear is due.
  const entries = Object.entries({ yearLookFromDay: rules.yearFromDay, ...rules }).map(([name, value]) => [
    name,
    frozenFact(value, lookedAt),
  ])
  return Object.fromEntries(entries) as OwnCountingRules
}

export function watchingOfFrozen({ watch, lookedAt }: Pick<FrozenYear, 'watch' | 'lookedAt'>): WatchRules {
  return {
    ratio: frozenFact(Number(watch.ratio), lookedAt),
    limit: frozenFact(Number(watch.limit), lookedAt),
    least: frozenFact(watch.least, lookedAt),
    ahead: frozenFact(watch.ahead, lookedAt),
  }
}

/** Results of a frozen series as a chart takes them: each at its own place, of no ear. */
export function groupsOfSeries({ species, procedure, results }: FrozenYear['watch']['series'][number]): CountedGroup[] {
  return Array.from(results, (result, place) => {
    const operation = String(place).padStart(7, '0')
    const known = result === '1'
    return {
      ears: [{ ...noEar, species, procedure, operation }],
      standing: known ? 'events' : 'free',
      known,
      last: '',
      died: false,
    }
  })
}

const noEar: OperatedEar = {
  animal: '',
  operation: '',
  session: '',
  stream: '',
  species: 'dog',
  procedure: 'teca-lbo',
  side: 'LEFT',
  reason: 'not-recorded',
  on: '',
  died: null,
  followedUntil: null,
  tractOn: null,
  blink: null,
  known: nothingKnown,
  ofNoSide: [],
  troubles: [],
}

function frozenFact(value: number, checked: string): Sourced<number> {
  return {
    value,
    sources: [],
    known: 'house',
    strength: 'practice',
    confidence: 'high',
    checked: checked as Sourced<number>['checked'],
  }
}
