import type { Category, DrugReading } from '#core/culture/reading.ts'
import type { GrownIsolate } from './isolate.ts'
import type { AntibiogramMethod } from './method.ts'

/** A drug of which only the category matters here; everything else as a reading by number has it. */
export function readDrug(agent: string, category: Category, more: Partial<DrugReading> = {}): DrugReading {
  const nothing = { before: null, changedBy: null, breakpoint: null, fallback: null, laboratory: null }
  return { agent, printed: agent, raw: '1', method: 'MIC', category, possible: [], ...nothing, flags: [], ...more }
}

type Pattern = Readonly<Record<string, Category>>

/** An isolate whose drugs are read as given. */
export function isolateOf(
  animal: string,
  day: string,
  pattern: Pattern,
  more: Partial<GrownIsolate<DrugReading>> = {},
): GrownIsolate<DrugReading> {
  const tested = Object.entries(pattern).map(([drug, category]) => readDrug(drug, category))
  const organism = 'staphylococcus-pseudintermedius'
  return { animal, host: 'dog', organism, day, site: null, key: null, tested, ...more }
}

/** Reads them as they stand. */
export function asGiven({ tested }: GrownIsolate<DrugReading>): { readonly results: readonly DrugReading[] } {
  return { results: tested }
}

/** The first isolate of each calendar year, all places together. */
export const plainMethod: AntibiogramMethod = {
  first: { kind: 'calendar-year' },
  sites: 'together',
  from: null,
  until: null,
  minimum: 1,
  flagBelow: 30,
  edition: 'an-edition',
}
