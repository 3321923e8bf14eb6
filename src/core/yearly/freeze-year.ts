import { countedGroups, dueDays, type OwnQuestion } from '../evidence/own/count-own.ts'
import type { OperatedEar } from '../evidence/own/operated-ear.ts'
import { type OwnCountingRules, type OwnOutcome, ownOutcomes } from '../evidence/own/own-outcome.ts'
import { compareText } from '../journal/compare-text.ts'
import { answer, type Outcome, refuse } from '../outcome/outcome.ts'
import { idOfEar, saltedNumbers, shortestSalt } from '../results/de-identify.ts'
import type { WatchRules } from '../results/watch.ts'
import { daysBetween } from '../time/calendar-day.ts'
import type { FrozenRow, FrozenYear } from './frozen-year.ts'

export type FreezeRefusal = { readonly because: 'salt-too-short' | 'year-not-over' | 'nothing-operated' }

type About = {
  readonly year: number
  /** The day, where the clinic is, on which it is looked at what is known. */
  readonly lookedAt: string
  readonly method: string
  readonly rules: OwnCountingRules
  readonly watching: WatchRules
  /** What is watched of each operation in a species, with the share that the studies let expect. */
  readonly watched: (of: Pick<OwnQuestion, 'species' | 'procedure'>) => readonly {
    readonly question: OwnQuestion
    readonly expected: number | null
  }[]
  /** Drawn by chance and thrown away: the numbers then lead back to nobody. */
  readonly salt: string
}

/** The ears that were operated in a year of the calendar. */
export function earsOfYear(ears: readonly OperatedEar[], year: number): OperatedEar[] {
  return ears.filter(({ on }) => on.startsWith(`${year}-`))
}

/**
 * The ears of a year that is over, as the data of its report: de-identified, in an order that says nothing, with the
 * rules of counting that hold on this day.
 *
 * @example freezeYear(ears, { year: 2025, lookedAt: '2026-11-30', method: '1', rules, watching, watched, salt })
 */
export function freezeYear(ears: readonly OperatedEar[], about: About): Outcome<FrozenYear, FreezeRefusal> {
  const { year, lookedAt, method, rules, watching, watched, salt } = about
  if (salt.length < shortestSalt) return refuse({ because: 'salt-too-short' })
  if (lookedAt <= `${year}-12-31`) return refuse({ because: 'year-not-over' })
  const some = earsOfYear(ears, year)
  if (some.length === 0) return refuse({ because: 'nothing-operated' })
  return answer({
    format: 1,
    year,
    lookedAt,
    method,
    outcomes: [...ownOutcomes],
    rules: valuesOf(rules),
    watch: {
      ratio: String(watching.ratio.value),
      limit: String(watching.limit.value),
      least: watching.least.value,
      ahead: watching.ahead.value,
      series: operationsIn(some).flatMap((of) =>
        watched(of).map(({ question: { outcome, unit }, expected }) => ({
          ...of,
          unit,
          outcome,
          expected: expected === null ? null : expected.toFixed(6),
          results: resultsInOrder({ ...of, outcome, unit }, some, lookedAt, rules),
        })),
      ),
    },
    rows: rowsOf(some, lookedAt, rules, salt),
  })
}

/** Every operation in a species that was done, in an order of their names. */
export function operationsIn<Of extends Pick<OwnQuestion, 'species' | 'procedure'>>(
  some: readonly Of[],
): Pick<OwnQuestion, 'species' | 'procedure'>[] {
  const found = new Map(some.map(({ species, procedure }) => [`${species} ${procedure}`, { species, procedure }]))
  // Dogs first, as on every page.
  return [...found.values()].sort((a, b) => compareText(b.species, a.species) || compareText(a.procedure, b.procedure))
}

function letterOf({ known: all, ofNoSide }: OperatedEar, outcome: OwnOutcome): string {
  if (ofNoSide.includes(outcome)) return 's'
  const known = all[outcome]
  return known === null ? '-' : known ? 'y' : 'n'
}

function valuesOf(rules: OwnCountingRules): FrozenYear['rules'] {
  const names = Object.keys(rules) as (keyof OwnCountingRules)[]
  return Object.fromEntries(names.map((name) => [name, rules[name].value])) as FrozenYear['rules']
}

function resultsInOrder(
  question: OwnQuestion,
  ears: readonly OperatedEar[],
  lookedAt: string,
  rules: OwnCountingRules,
): string {
  return countedGroups(question, ears, lookedAt, rules)
    .filter(({ standing }) => standing === 'events' || standing === 'free')
    .sort((a, b) => compareText(a.last, b.last) || compareText(a.ears[0].operation, b.ears[0].operation))
    .map(({ standing }) => (standing === 'events' ? '1' : '0'))
    .join('')
}

function rowsOf(ears: readonly OperatedEar[], lookedAt: string, rules: OwnCountingRules, salt: string): FrozenRow[] {
  const earOf = saltedNumbers(salt, 'ear', ears.map(idOfEar))
  const animals = ears.map(({ animal }) => animal)
  const animalOf = saltedNumbers(salt, 'animal', animals)
  const sessions = ears.map(({ session }) => session)
  const sessionOf = saltedNumbers(salt, 'anaesthetic', sessions)
  const asked = [...new Set(ownOutcomes.map((outcome) => dueDays(outcome, rules)))].sort((a, b) => b - a)
  const rows = ears.map((ear): FrozenRow => {
    const after = (day: string | null) => (day === null ? null : daysBetween(ear.on, day))
    const age = daysBetween(ear.on, lookedAt)
    return {
      ear: earOf.get(idOfEar(ear)) ?? 0,
      animal: animalOf.get(ear.animal) ?? 0,
      anaesthetic: sessionOf.get(ear.session) ?? 0,
      species: ear.species,
      procedure: ear.procedure,
      side: ear.side,
      reason: ear.reason,
      dueDays: asked.find((one) => one <= age) ?? 0,
      diedAfterDays: after(ear.died),
      followedForDays: after(ear.followedUntil),
      tractAfterDays: after(ear.tractOn),
      blinkLostAfterDays: after(ear.blink?.lostOn ?? null),
      blinkBackAfterDays: after(ear.blink?.backOn ?? null),
      blinkLookedAfterDays: after(ear.blink?.lastLookOn ?? null),
      known: ownOutcomes.map((outcome) => letterOf(ear, outcome)).join(''),
    }
  })
  return rows.sort((a, b) => a.ear - b.ear)
}
