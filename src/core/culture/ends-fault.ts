import type { Edition, Ends, TestMethod } from './breakpoint.ts'
import { onLadder } from './ladder.ts'

/** What is wrong with the ends of a row as a whole. Each end alone was read before. */
export type EndsFault = 'off-the-ladder' | 'ends-turned' | 'ends-gap'

/** No zone is smaller than the disk that it is measured around. */
const smallestZone = 6

/**
 * Whether the ends of a row can part every value: they stand on the ladder (zones in whole mm), go one way from S to R,
 * and leave no step between them without a name. Null where nothing is wrong.
 *
 * @example endsFault({ susceptible: '2', between: null, resistant: '8' }, 'MIC', 'CLSI') // 'ends-gap'
 */
export function endsFault(
  { susceptible, between, resistant }: Ends,
  method: TestMethod,
  convention: Edition['convention'],
): EndsFault | null {
  const at = (end: string) => (method === 'MIC' ? rungOf(end) : zoneOf(end))
  const s = susceptible === null ? null : at(susceptible)
  const r = resistant === null ? null : at(resistant)
  const spans = (between?.steps ?? []).map(({ value, upTo }) => [at(value), at(upTo ?? value)] as const)
  const places = spans.flat()
  if ([s, r, ...places].includes(undefined)) return 'off-the-ladder'
  const named = new Set(spans.flatMap(([from, to]) => everyOf(from ?? 0, to ?? 0)))
  const line = [...named].sort((one, other) => one - other)
  if (!rises([s, ...line, r], convention)) return 'ends-turned'
  const endR = typeof r === 'number' ? [convention === 'CLSI' ? r : r + 1] : []
  const joined = [...(typeof s === 'number' ? [s] : []), ...line, ...endR]
  return gapless(joined) ? null : 'ends-gap'
}

/** Larger means more resistant, so that dilutions and zones are judged alike. */
function rungOf(end: string): number | undefined {
  const place = onLadder(end)
  return place?.exact ? place.rung : undefined
}

function zoneOf(end: string): number | undefined {
  const zone = Number(end)
  return Number.isInteger(zone) && zone >= smallestZone ? -zone : undefined
}

function everyOf(one: number, other: number): number[] {
  const from = Math.min(one, other)
  return Array.from({ length: Math.abs(one - other) + 1 }, (_, place) => from + place)
}

/** By EUCAST the last step that is not R may be the very number beyond which R begins. */
function rises(places: readonly (number | null | undefined)[], convention: Edition['convention']): boolean {
  const line = places.filter((place) => typeof place === 'number')
  return line.every((place, index) => {
    const before = line[index - 1]
    if (before === undefined || place > before) return true
    return convention === 'EUCAST' && index === line.length - 1 && place === before
  })
}

/** By EUCAST R begins one step beyond its end. */
function gapless(line: readonly number[]): boolean {
  return line.every((place, index) => index === 0 || place === (line[index - 1] ?? place) + 1)
}
