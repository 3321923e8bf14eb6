import type { OperatedEar } from '../evidence/own/operated-ear.ts'
import { type OwnOutcome, ownOutcomes } from '../evidence/own/own-outcome.ts'

/** What stands otherwise now than when the year was frozen; values are codes or days, content says them. */
export type EarChange = {
  readonly operation: string
  readonly side: OperatedEar['side']
  readonly what:
    | OwnOutcome
    | 'ear-on-record'
    | 'operation-as'
    | 'same-animal'
    | 'tract-on'
    | 'died-on'
    | 'blink-lost-on'
  readonly before: string
  readonly after: string
}

/**
 * What contradicts a frozen year among the ears of one case. Only what makes it wrong: a thing that was said to be known
 * and is otherwise, an event that is worse than was known, an ear more or fewer. What was not known then and turned out
 * well fills a gap and contradicts nothing. A tract counts whenever it comes.
 *
 * @param then the ears as they were known when it was frozen
 * @example earChanges(then, now, { year: 2025, lookedAt: '2026-01-20' })[0]?.what // 'deep_recurrence'
 */
export function earChanges(
  then: readonly OperatedEar[],
  now: readonly OperatedEar[],
  { year, lookedAt }: { readonly year: number; readonly lookedAt: string },
): EarChange[] {
  const ofYear = ({ on }: OperatedEar) => on.startsWith(`${year}-`)
  const before = new Map(then.filter(ofYear).map((ear) => [ear.operation, ear]))
  const after = new Map(now.filter(ofYear).map((ear) => [ear.operation, ear]))
  return [...new Set([...before.keys(), ...after.keys()])].flatMap((operation) => {
    const [old, newer] = [before.get(operation), after.get(operation)]
    if (old && newer) return changesOf(old, newer, lookedAt)
    const ear = (old ?? newer) as OperatedEar
    const onRecord = old ? ['on-record', 'not-on-record'] : ['not-on-record', 'on-record']
    return [change(ear, 'ear-on-record', onRecord[0] ?? '', onRecord[1] ?? '')]
  })
}

function changesOf(old: OperatedEar, now: OperatedEar, lookedAt: string): EarChange[] {
  const as = ({ species, procedure, side }: OperatedEar) => `${species}, ${procedure}, ${side}`
  const tract = now.tractOn !== old.tractOn && (old.tractOn !== null || now.tractOn !== null)
  return [
    ...(as(old) === as(now) ? [] : [change(now, 'operation-as', as(old), as(now))]),
    ...(old.animal === now.animal ? [] : [change(now, 'same-animal', 'as-then', 'otherwise-now')]),
    ...ownOutcomes.flatMap((outcome) => {
      const [before, after] = [old.known[outcome], now.known[outcome]]
      return contradicts(outcome, before, after) ? [change(now, outcome, say(before), say(after))] : []
    }),
    ...(tract ? [change(now, 'tract-on', old.tractOn ?? 'no-day', now.tractOn ?? 'no-day')] : []),
    ...dayChange(now, 'died-on', old.died, now.died, lookedAt),
    ...dayChange(now, 'blink-lost-on', old.blink?.lostOn ?? null, now.blink?.lostOn ?? null, lookedAt),
  ]
}

/** Known then and otherwise now; or not known then and now known to have gone badly. */
function contradicts(outcome: OwnOutcome, before: boolean | null, after: boolean | null): boolean {
  if (before === after) return false
  if (before !== null) return true
  return after === (outcome !== 'resolution_or_improved')
}

/** A day that was on record and is another, or one that lay before the day of looking and was not known then. */
function dayChange(
  ear: OperatedEar,
  what: 'died-on' | 'blink-lost-on',
  before: string | null,
  after: string | null,
  lookedAt: string,
): EarChange[] {
  if (before === after) return []
  if (before === null && after !== null && after > lookedAt) return []
  return [change(ear, what, before ?? 'no-day', after ?? 'no-day')]
}

function change({ operation, side }: OperatedEar, what: EarChange['what'], before: string, after: string): EarChange {
  return { operation, side, what, before, after }
}

function say(known: boolean | null): string {
  return known === null ? 'known-not' : known ? 'known-yes' : 'known-no'
}
