import type { DeIdentifiedEar, SmallCell } from '../results/de-identify.ts'
import { knownOf } from './ears-of-frozen.ts'
import { operationsIn } from './freeze-year.ts'
import type { FrozenRow, FrozenYear } from './frozen-year.ts'

export type RowsToGive = {
  readonly ears: readonly DeIdentifiedEar[]
  /** Operations of which no row is given: fewer animals than this had them in the year. How many is not said. */
  readonly smallBelow: number
  readonly leftOut: readonly SmallCell[]
}

/**
 * The frozen rows for somebody outside. The year of all of them is known, so that where too few animals share an
 * operation the year cannot be withheld: those rows are left out, and the operation is named.
 *
 * @example rowsToGive(frozen, 5).leftOut // [{ species: 'cat', procedure: 'traction', year: '2025' }]
 */
export function rowsToGive({ rows, outcomes, year }: FrozenYear, smallBelow: number): RowsToGive {
  const animals = new Map<string, Set<number>>()
  for (const row of rows) {
    const those = animals.get(cellOf(row)) ?? new Set<number>()
    animals.set(cellOf(row), those.add(row.animal))
  }
  const isSmall = (of: Pick<FrozenRow, 'species' | 'procedure'>) => (animals.get(cellOf(of))?.size ?? 0) < smallBelow
  return {
    ears: rows.filter((row) => !isSmall(row)).map((row) => given(row, outcomes, String(year))),
    smallBelow,
    leftOut: operationsIn(rows)
      .filter(isSmall)
      .map((of) => ({ ...of, year: String(year) })),
  }
}

function cellOf({ species, procedure }: Pick<FrozenRow, 'species' | 'procedure'>): string {
  return `${species} ${procedure}`
}

function given(row: FrozenRow, outcomes: FrozenYear['outcomes'], year: string): DeIdentifiedEar {
  // The reason stays in the house: with it a rare case could be known again.
  const { dueDays: _, blinkLookedAfterDays: __, reason: ___, ...rest } = row
  return { ...rest, known: knownOf(row, outcomes), year }
}
