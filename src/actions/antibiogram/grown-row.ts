import { susceptibility } from '#content/susceptibility/index.ts'
import { type Species, speciesList } from '#core/animal/species.ts'
import type { IsolateRow } from '#core/antibiogram/gather-isolates.ts'
import { type Purpose, purposes, type ReportState, reportStates } from '#core/antibiogram/purpose.ts'
import { recogniseAgent, recogniseOrganism } from '#core/culture/recognise.ts'
import { cellsOf, dayIn, listedIn, wanted } from './grown-cells.ts'
import { type TestedRow, testedIn } from './tested-cell.ts'

/** One row as it was read. */
export type GrownRow = Omit<IsolateRow<TestedRow>, 'host'> & {
  /** Null where the animal is neither dog nor cat. */
  readonly host: Species | null
  /** Null where the row does not say. */
  readonly purpose: Purpose | null
  readonly status: ReportState | null
}

/**
 * Reads the rows of one table. The same words come again in every row: what each means is worked out once, and rows share
 * one copy of it, so that a million of them fit.
 *
 * @example grownRows().read({ animal: 'A', collectedOn: '2026-01-05', host: 'dog', … }, 1)
 */
export function grownRows() {
  /** Columns that nobody reads. */
  const unread = new Set<string>()
  const same = remembering((text: string) => text)
  const organismOf = remembering((text: string) => recogniseOrganism(text, susceptibility.organisms).id ?? text)
  const agentOf = remembering((text: string) => recogniseAgent(text, susceptibility.agents).id)
  const tests = new Map<string, TestedRow | null>()
  const days = new Set<string>()

  const read = (input: unknown, number: number): GrownRow => {
    const place = `rows[${number - 1}]`
    const cells = cellsOf(input, place, unread)
    const collected = wanted(cells, 'collectedOn', place)
    const day = days.has(collected) ? collected : dayIn(collected, place)
    days.add(day)
    const { drug, mic, zone, disk, category, site, isolate } = cells
    const key = `${drug}\u0000${mic}\u0000${zone}\u0000${disk}\u0000${category}`
    const known = tests.get(key)
    const tested = known === undefined ? testedIn(cells, place, agentOf) : known
    tests.set(key, tested)
    const host = wanted(cells, 'host', place).toLowerCase()
    return {
      animal: same(wanted(cells, 'animal', place)),
      host: speciesList.find((species) => species === host) ?? null,
      organism: organismOf(wanted(cells, 'organism', place)),
      day: same(day),
      site: site === '' ? null : same(site.toLowerCase()),
      key: isolate === '' ? null : same(isolate),
      tested,
      purpose: listedIn(purposes, { cells, column: 'purpose', place }),
      status: listedIn(reportStates, { cells, column: 'status', place }),
    }
  }
  return { read, unread }
}

function remembering<Value>(work: (text: string) => Value): (text: string) => Value {
  const known = new Map<string, Value>()
  return (text) => {
    const before = known.get(text)
    if (before !== undefined) return before
    const value = work(text)
    known.set(text, value)
    return value
  }
}
