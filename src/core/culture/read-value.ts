import type { Breakpoint, Edition } from './breakpoint.ts'
import { highestRung, lowestRung, onLadder, type Rung, rungsOf } from './ladder.ts'
import type { PrintedValue, ValueDoubt } from './printed-value.ts'
import type { Category } from './reading.ts'

/** A category that a number may have, with the dose that the standard ties to it. */
export type Possible = { readonly category: Category; readonly dose: string | null }
/** Every category that a printed value may have, least resistant first; one alone is certain. */
export type ValueReading =
  | { readonly kind: 'read'; readonly possible: readonly [Possible, ...Possible[]] }
  | { readonly kind: 'doubt'; readonly doubt: ValueDoubt }

/** A zone is never smaller than the disk, and none is measured beyond this. */
const disk = 6
const widestZone = 60

/** From least to most resistant; NS is what lies above S where nobody says where R begins. */
export const resistanceOrder: readonly Category[] = ['S', 'SDD', 'I', 'NS', 'R']

/**
 * What a printed value may mean under one row: the value as a set, each member judged by itself. Only when all agree is
 * there a category.
 */
export function readValue(
  value: Extract<PrintedValue, { kind: 'mic' | 'zone' }>,
  row: Breakpoint,
  convention: Edition['convention'],
): ValueReading {
  const found =
    value.kind === 'mic'
      ? micMeans(value, judged(row, convention))
      : zoneMeans(value.sign, Number(value.millimetres), judged(row, convention))
  if (!found) return { kind: 'doubt', doubt: 'off-the-ladder' }
  const unlike = new Map(found.map((one) => [`${one.category} ${one.dose}`, one]))
  const [first, ...more] = [...unlike.values()].sort((one, other) => rank(one) - rank(other))
  if (!first) throw new Error(`Nothing is possible for ${JSON.stringify(value)}.`)
  return { kind: 'read', possible: [first, ...more] }
}

type Judge = (at: number) => Possible

function micMeans({ sign, amount }: Extract<PrintedValue, { kind: 'mic' }>, judge: Judge): Possible[] | null {
  const rungs = rungsOf(sign, amount)
  return rungs && span(rungs.from, rungs.to).map(judge)
}

function zoneMeans(sign: string, width: number, judge: Judge): Possible[] | null {
  if (width > widestZone) return null
  const zone = Math.max(width, disk)
  switch (sign) {
    case '<=':
      return span(disk, Math.floor(zone)).map(judge)
    case '<':
      return span(disk, Math.max(Math.ceil(zone) - 1, disk)).map(judge)
    case '>=':
      return span(Math.ceil(zone), widestZone).map(judge)
    case '>':
      return span(Math.floor(zone) + 1, Math.max(widestZone, Math.floor(zone) + 1)).map(judge)
    default:
      return [judge(zone)]
  }
}

function span(from: number, to: number): number[] {
  return Array.from({ length: to - from + 1 }, (_, place) => from + place)
}

function rank({ category }: Possible): number {
  return resistanceOrder.indexOf(category)
}

/** Worked out once for each row: a laboratory's file asks for the same rows again and again. */
const kept = new WeakMap<Breakpoint, Judge>()
function judged(row: Breakpoint, convention: Edition['convention']): Judge {
  const before = kept.get(row)
  if (before) return before
  const judge = judgeOf(row, convention)
  kept.set(row, judge)
  return judge
}

/** Dilutions and zones are judged alike, only that a larger number is worse of the one and better of the other. */
function judgeOf(row: Breakpoint, convention: Edition['convention']): Judge {
  const { susceptible, between, resistant } = row.ends.value
  const isMic = row.method === 'MIC'
  const placed = (end: string) => (isMic ? rung(end, row) : Number(end))
  const worse = (one: number, other: number) => (isMic ? one > other : one < other)
  const endS = susceptible === null ? null : placed(susceptible)
  const endR = resistant === null ? null : placed(resistant)
  const steps = (between?.steps ?? []).map(({ value, upTo, dose }) => ({
    from: placed(value),
    to: placed(upTo ?? value),
    dose: dose ?? null,
  }))
  const doseOfS = row.dose?.value ?? null
  return (at) => {
    if (endS !== null && !worse(at, endS)) return { category: 'S', dose: doseOfS }
    if (endR !== null && (worse(at, endR) || (convention === 'CLSI' && at === endR)))
      return { category: 'R', dose: null }
    const step = steps.find(({ from, to }) => at >= from && at <= to)
    return lying(between?.category ?? null, step?.dose ?? null, endR)
  }
}

/** Neither S nor R: what the row calls it. Where nobody says where R begins, it is only known not to be S. */
function lying(named: 'SDD' | 'I' | null, dose: string | null, resistant: number | null): Possible {
  if (named) return { category: named, dose }
  return { category: resistant === null ? 'NS' : 'I', dose: null }
}

function rung(end: string, row: Breakpoint): Rung {
  const place = onLadder(end)
  if (!place || place.rung <= lowestRung || place.rung >= highestRung) {
    throw new Error(`${row.id}: the end ${end} lies on no rung.`)
  }
  return place.rung
}
