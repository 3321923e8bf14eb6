import type { CaseFile } from '#core/journal/clinic.ts'
import { compareText } from '#core/journal/compare-text.ts'
import type { Line } from '#core/journal/fold.ts'
import { endOfDay } from '#core/time/calendar-day.ts'

/** What the clinic sets for all its cases. */
const setByTheHouse: ReadonlySet<string> = new Set([
  'house-policy',
  'dose-policy',
  'usual-plan',
  'shelf-item',
  'breakpoint-edition',
  'laboratory-table',
  'cost-assumption',
  'figures-approved',
])

/** One state of everything the clinic had set, and the first of these days on which it held. */
export type Stand = { readonly number: number; readonly from: string; readonly lines: readonly Line[] }

/**
 * What was in force at the end of each of these days. Days with the same entries in force share a stand.
 *
 * @example standsOf(file, ['2026-02-01', '2026-02-10']).get('2026-02-10')?.number // 2
 */
export function standsOf(file: CaseFile, days: readonly string[]): ReadonlyMap<string, Stand> {
  const set = file.house.lines.filter(({ header }) => setByTheHouse.has(header.kind))
  const spans = set.map((line) => ({ line, from: since(line), until: untilOf(line, file) }))
  const known = new Map<string, Stand>()
  return new Map(
    days.map((day) => {
      const end = endOfDay(day, file.clinic.zone)
      const lines = spans.filter(({ from, until }) => from <= end && (until === null || until > end))
      const key = lines.map(({ line }) => line.header.id).join()
      const stand = known.get(key) ?? { number: known.size + 1, from: day, lines: lines.map(({ line }) => line) }
      known.set(key, stand)
      return [day, stand]
    }),
  )
}

/** An entry that was written afterwards was not in force before. */
function since({ at, header }: Line): string {
  return at > header.writtenAt ? at : header.writtenAt
}

function untilOf({ supersededBy, withdrawnBy }: Line, { house }: CaseFile): string | null {
  const ends = [...supersededBy, ...withdrawnBy].flatMap((id) => {
    const line = house.line(id)
    return line ? [since(line)] : []
  })
  return ends.sort(compareText)[0] ?? null
}
