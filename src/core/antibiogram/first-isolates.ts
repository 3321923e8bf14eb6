import type { Category } from '#core/culture/reading.ts'
import { daysBetween } from '#core/time/calendar-day.ts'
import { differencePoints } from './difference-points.ts'
import { groupOf, within } from './gather-isolates.ts'
import type { Isolated } from './isolate.ts'
import type { AntibiogramMethod, DifferencePoints } from './method.ts'

/** The category of each drug of an isolate; asked only where patterns are compared. */
export type PatternOf<Isolate> = (isolate: Isolate) => ReadonlyMap<string, Category>

/**
 * One isolate per animal and organism in a period: the first, whatever its place and pattern (after CLSI M39; Hindler &
 * Stelling, Clin Infect Dis 2007;44:867–873). Isolates of one day stand in the order given. A calendar year is counted
 * within the period asked for; episodes begin wherever they begin, and those outside the period are left out afterwards.
 *
 * @example firstIsolates(isolates, method, { patternOf, points })
 */
export function firstIsolates<Isolate extends Isolated>(
  isolates: readonly Isolate[],
  method: Pick<AntibiogramMethod, 'first' | 'sites' | 'from' | 'until'>,
  compare: { readonly patternOf: PatternOf<Isolate>; readonly points: DifferencePoints },
): Isolate[] {
  const { first } = method
  const inPeriod = (isolate: Isolate) => within(method, isolate.day)
  const groups = new Map<string, Isolate[]>()
  for (const isolate of first.kind === 'calendar-year' ? isolates.filter(inPeriod) : isolates) {
    const key = groupOf(isolate, method)
    const group = groups.get(key)
    if (group) group.push(isolate)
    else groups.set(key, [isolate])
  }
  return [...groups.values()].flatMap((group) => firstOf(group.sort(byDay), first, compare)).filter(inPeriod)
}

function firstOf<Isolate extends Isolated>(
  group: readonly Isolate[],
  rule: AntibiogramMethod['first'],
  { patternOf, points }: { readonly patternOf: PatternOf<Isolate>; readonly points: DifferencePoints },
): Isolate[] {
  const kept: Isolate[] = []
  let episode: Isolate | undefined
  for (const isolate of group) {
    const begins = episode === undefined || beginsAnew(episode.day, isolate.day, rule)
    const last = kept.at(-1)
    const differs = !begins && last !== undefined && differsEnough(patternOf, [last, isolate], points, rule)
    if (begins) episode = isolate
    if (begins || differs) kept.push(isolate)
  }
  return kept
}

function beginsAnew(first: string, day: string, rule: AntibiogramMethod['first']): boolean {
  if (rule.kind === 'calendar-year') return first.slice(0, 4) !== day.slice(0, 4)
  return daysBetween(first, day) >= rule.days
}

function differsEnough<Isolate>(
  patternOf: PatternOf<Isolate>,
  [last, next]: readonly [Isolate, Isolate],
  points: DifferencePoints,
  rule: AntibiogramMethod['first'],
): boolean {
  if (rule.kind !== 'phenotype') return false
  const sum = differencePoints(patternOf(last), patternOf(next), points)
  return rule.when === 'reached' ? sum >= rule.points : sum > rule.points
}

function byDay(a: Isolated, b: Isolated): number {
  return a.day < b.day ? -1 : a.day > b.day ? 1 : 0
}
