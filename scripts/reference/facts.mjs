import { plainText } from './markdown.mjs'

const isQuantity = (value) => typeof value === 'object' && value !== null && 'unit' in value && 'value' in value
const isDecimal = (value) => typeof value?.toFixed === 'function' && typeof value !== 'number'
export const isSourced = (value) =>
  typeof value === 'object' && value !== null && Array.isArray(value.sources) && 'known' in value && 'checked' in value

const knownInWords = {
  read: 'read',
  remembered: 'remembered, not read again',
  'common-practice': 'common practice',
  house: 'house judgement',
}

/** `read; guideline; medium confidence`: how we know it, how good the evidence is, how surely we copied it. */
export function howKnown({ known, strength, confidence }) {
  return `${knownInWords[known]}; ${strength}; ${confidence} confidence`
}

/** The sources as links to the page of sources, with the place where to look. */
export function whereFrom({ sources, where, checked }) {
  const links = sources.map((id) => `[${id}](sources.md#${id})`).join(', ')
  return `${links}${where ? ` (${plainText(where)})` : ''}, checked ${checked}`
}

/** Any value of content as words for a table. */
export function say(value, sayQuantity) {
  if (value === undefined || value === null) return 'none'
  if (isDecimal(value)) return value.toFixed()
  if (isQuantity(value) && isDecimal(value.value)) return sayQuantity(value)
  if (Array.isArray(value)) return value.map((item) => say(item, sayQuantity)).join(', ') || 'none'
  if (typeof value !== 'object') return plainText(value)
  const period = sayPeriod(value)
  if (period !== undefined) return period
  const range = sayRange(value, sayQuantity)
  if (range !== undefined) return range
  return Object.entries(value)
    .filter(([key]) => !(isSourced(value) && provenanceKeys.has(key)))
    .map(([key, member]) => `${inWords(key)}: ${say(member, sayQuantity)}`)
    .join('; ')
}

const provenanceKeys = new Set(['sources', 'where', 'known', 'strength', 'confidence', 'checked'])

function sayPeriod(value) {
  if ('count' in value && 'unit' in value)
    return `${value.count} ${value.count === 1 ? value.unit.replace(/s$/, '') : value.unit}`
  const { from, until } = value
  if (from?.unit === undefined || until?.unit === undefined || from.count === undefined) return undefined
  if (from.unit === until.unit && from.count === until.count) return sayPeriod(from)
  return from.unit === until.unit ? `${from.count} to ${sayPeriod(until)}` : `${sayPeriod(from)} to ${sayPeriod(until)}`
}

function sayRange(value, sayQuantity) {
  const { low, high, ...rest } = value
  if (!isQuantity(low) || !isQuantity(high) || !isDecimal(low.value)) return undefined
  const same = low.value.eq(high.value)
  const span = same ? sayQuantity(low) : `${low.value.toFixed()} to ${sayQuantity(high)}`
  return typeof rest.words === 'string' ? `${span} (${plainText(rest.words)})` : span
}

/** `maxSingle` and `local_block` as people write them. */
export function inWords(name) {
  return name.replaceAll(/([a-z\d])([A-Z])/g, (_, a, b) => `${a} ${b.toLowerCase()}`).replaceAll(/[_-]/g, ' ')
}

/** Every sourced fact inside a value, with its path in words, in the order it stands. */
export function factsIn(value, path = []) {
  if (value === null || typeof value !== 'object' || isDecimal(value) || (isQuantity(value) && isDecimal(value.value)))
    return []
  const own = isSourced(value) ? [{ path, fact: value }] : []
  const inner = Object.entries(value)
    .filter(([key]) => !(isSourced(value) && provenanceKeys.has(key)))
    .flatMap(([key, member]) => factsIn(member, [...path, key]))
  return [...own, ...inner]
}

/** Every source id that a value cites, sorted, once each. */
export function citedIn(value) {
  return [...new Set(factsIn(value).flatMap(({ fact }) => fact.sources))].sort()
}
