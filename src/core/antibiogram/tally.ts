import type { DrugReading, IsolateReading } from '#core/culture/reading.ts'
import { type Counted, drugOf, patternOf } from './counted-category.ts'
import { countOfCategory, type DrugCounts, noCounts } from './drug-figures.ts'

type Counts = { -readonly [What in keyof DrugCounts]: number }

/** What was counted of one drug in the isolates of one organism. */
export type DrugTally = {
  readonly drug: string
  readonly counts: Counts
  /** Of those with a category, how many rest on the laboratory’s word without a value. */
  alone: number
  intrinsic: boolean
  /** What a human or other-host breakpoint would say where the edition has none; never mixed with the counts. */
  readonly fallback: Counts
  /** The doses that susceptible-dose-dependent isolates need, as the standard writes them. */
  readonly doses: Set<string>
  /** Tested isolates that are resistant to nothing else. */
  withoutOther: number
  /** Tested isolates that are resistant to nothing at all. */
  withoutAny: number
}

/** The isolates of one organism, counted one by one; nothing is kept of an isolate but the counts. */
export type OrganismTally = {
  n: number
  firstDay: string
  lastDay: string
  /** Isolates that are resistant to nothing that was tested, what they are by nature apart. */
  withoutAny: number
  readonly drugs: Map<string, DrugTally>
}

export function newTally(): OrganismTally {
  return { n: 0, firstDay: '', lastDay: '', withoutAny: 0, drugs: new Map() }
}

/** Adds one isolate to the counts of its organism. */
export function tallyIsolate(tally: OrganismTally, day: string, { results }: Pick<IsolateReading, 'results'>): void {
  tally.n += 1
  if (tally.firstDay === '' || day < tally.firstDay) tally.firstDay = day
  if (day > tally.lastDay) tally.lastDay = day
  const pattern = patternOf(results)
  const byNature = new Set<string>()
  for (const reading of results) if (reading.changedBy === 'intrinsic') byNature.add(drugOf(reading))
  let resistant = 0
  for (const [drug, counted] of pattern) if (isResistant(counted) && !byNature.has(drug)) resistant += 1
  if (resistant === 0) tally.withoutAny += 1
  for (const [drug, counted] of pattern) {
    const one = tallyOf(tally, drug)
    if (byNature.has(drug)) one.intrinsic = true
    one.counts[countOfCategory[counted.category]] += 1
    if (counted.alone && counted.category !== 'NI') one.alone += 1
    const others = resistant - (isResistant(counted) && !byNature.has(drug) ? 1 : 0)
    if (others === 0) one.withoutOther += 1
    if (resistant === 0) one.withoutAny += 1
  }
  for (const reading of results) {
    const one = tally.drugs.get(drugOf(reading))
    if (one) addDoseAndFallback(one, reading)
  }
}

function addDoseAndFallback(one: DrugTally, { category, breakpoint, fallback }: DrugReading): void {
  if (category === 'SDD' && breakpoint?.dose) one.doses.add(breakpoint.dose)
  if (category === 'no_breakpoint' && fallback) one.fallback[countOfCategory[fallback.category]] += 1
}

function tallyOf({ drugs }: OrganismTally, drug: string): DrugTally {
  const before = drugs.get(drug)
  if (before) return before
  const none = { counts: { ...noCounts }, fallback: { ...noCounts }, alone: 0, withoutOther: 0, withoutAny: 0 }
  const begun: DrugTally = { drug, ...none, intrinsic: false, doses: new Set() }
  drugs.set(drug, begun)
  return begun
}

function isResistant({ category }: Counted): boolean {
  return category === 'R' || category === 'NS'
}
