import { isDecimal, isSourced, membersOf } from '#core/evidence/facts-in.ts'
import { isQuantity, plain } from '#core/units/quantity.ts'
import { sayQuantity } from '../case/say-quantity.ts'

/**
 * Any value of content as words: quantities with their unit, periods, ranges, lists; a record as `name: value`.
 *
 * @example sayContent({ from: { count: 10, unit: 'days' }, until: { count: 14, unit: 'days' } }) // '10 to 14 days'
 */
export function sayContent(value: unknown): string {
  if (value === undefined || value === null) return 'none'
  if (isQuantity(value)) return sayQuantity(value)
  if (isDecimal(value)) return value.toFixed()
  if (Array.isArray(value)) return value.map(sayContent).join(', ') || 'none'
  if (typeof value !== 'object') return String(value)
  return (
    sayPeriod(value) ??
    sayRange(value) ??
    membersOf(value)
      .map(([key, member]) => `${inWords(key)}: ${sayContent(member)}`)
      .join('; ')
  )
}

/** A fact in words: its value; for a fact without one, what it says itself, leaving facts inside it to their own lines. */
export function sayFact(fact: object): string {
  if ('value' in fact && fact.value !== undefined) return sayContent(fact.value)
  const own = membersOf(fact).filter(([, member]) => !holdsFacts(member))
  return own.length === 0 ? '' : sayContent(Object.fromEntries(own))
}

function holdsFacts(member: unknown): boolean {
  if (typeof member !== 'object' || member === null || isQuantity(member) || isDecimal(member)) return false
  return isSourced(member) || Object.values(member).some(holdsFacts)
}

/** `maxSingle` and `local_block` as people write them. */
export function inWords(name: string): string {
  return name
    .replaceAll(/([a-z\d])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`)
    .replaceAll(/[_-]/g, ' ')
}

type Period = { readonly count: number; readonly unit: string }
const isPeriod = (value: unknown): value is Period =>
  typeof value === 'object' && value !== null && 'count' in value && 'unit' in value

function sayPeriod(value: object): string | undefined {
  if (isPeriod(value)) return `${value.count} ${value.count === 1 ? value.unit.replace(/s$/, '') : value.unit}`
  if (!('from' in value && 'until' in value)) return undefined
  const { from, until } = value
  if (!isPeriod(from) || !isPeriod(until)) return undefined
  if (from.unit === until.unit && from.count === until.count) return sayPeriod(from)
  return from.unit === until.unit ? `${from.count} to ${sayPeriod(until)}` : `${sayPeriod(from)} to ${sayPeriod(until)}`
}

function sayRange(value: object): string | undefined {
  if (!('low' in value && 'high' in value)) return undefined
  const { low, high } = value
  if (!isQuantity(low) || !isQuantity(high)) return undefined
  const span = low.value.eq(high.value) ? sayQuantity(low) : `${plain(low.value)} to ${sayQuantity(high)}`
  return 'words' in value && typeof value.words === 'string' ? `${span} (${value.words})` : span
}
