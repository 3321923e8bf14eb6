import type { Category, DrugReading } from '#core/culture/reading.ts'

/** What a reading counts as; `alone` where only a category was printed, by whatever edition the laboratory used. */
export type Counted = { readonly category: Category; readonly alone: boolean }

function counted({ category, changedBy, flags }: DrugReading): Counted {
  return { category, alone: changedBy === null && flags.includes('laboratory-category-only') }
}

/** One drug that stands twice in an isolate: readings that contradict each other leave its category unknown. */
function together(one: Counted, other: Counted): Counted {
  if (one.category === other.category) return { category: one.category, alone: one.alone && other.alone }
  if (tellsNothing(one)) return other
  if (tellsNothing(other)) return one
  return { category: 'NI', alone: false }
}

function tellsNothing({ category }: Counted): boolean {
  return category === 'NI' || category === 'no_breakpoint'
}

/**
 * The pattern of an isolate: each drug once, by its id or, where nobody knows it, as printed. What is only concluded of
 * a drug that nobody tested does not count.
 */
export function patternOf(readings: readonly DrugReading[]): ReadonlyMap<string, Counted> {
  const pattern = new Map<string, Counted>()
  for (const reading of readings) {
    if (reading.flags.includes('not-printed')) continue
    const drug = drugOf(reading)
    const before = pattern.get(drug)
    pattern.set(drug, before ? together(before, counted(reading)) : counted(reading))
  }
  return pattern
}

export function drugOf({ agent, printed: name }: DrugReading): string {
  return agent ?? name
}
