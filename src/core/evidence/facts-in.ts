import { isQuantity } from '../units/quantity.ts'
import type { Provenance, SourceId } from './sourced.ts'

/** A sourced fact somewhere inside a value, with the names that lead to it. */
export type FactIn = { readonly path: readonly string[]; readonly fact: Provenance & { readonly value?: unknown } }

const provenanceKeys = new Set(['sources', 'where', 'known', 'strength', 'confidence', 'checked'])

export function isSourced(value: unknown): value is Provenance & { readonly value?: unknown } {
  return isRecord(value) && Array.isArray(value.sources) && 'known' in value && 'checked' in value
}

/**
 * Every sourced fact inside a value of content, in the order it stands. A fact may hold others.
 *
 * @example factsIn(bupivacaine)[0] // { path: ['localAnaesthetic', 'limits', 'dog'], fact: { value: 2 mg/kg, … } }
 */
export function factsIn(value: unknown, path: readonly string[] = []): FactIn[] {
  if (!isRecord(value) || isQuantity(value) || isDecimal(value)) return []
  const own = isSourced(value) ? [{ path, fact: value }] : []
  const inner = membersOf(value).flatMap(([key, member]) => factsIn(member, [...path, key]))
  return [...own, ...inner]
}

/**
 * What a value says apart from how it is known.
 *
 * @example membersOf({ words: 'once', sources: ['a'], known: 'read', checked: '2026-11-25', … }) // [['words', 'once']]
 */
export function membersOf(value: object): [string, unknown][] {
  const members = Object.entries(value)
  return isSourced(value) ? members.filter(([key]) => !provenanceKeys.has(key)) : members
}

/** Every source that a value cites, sorted, once each. Example: `citedIn(bupivacaine)`. */
export function citedIn(value: unknown): SourceId[] {
  return [...new Set(factsIn(value).flatMap(({ fact }) => fact.sources))].sort()
}

export function isDecimal(value: unknown): value is { toFixed(): string } {
  return isRecord(value) && typeof value.toFixed === 'function'
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null
}
