import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js'

/** What a journal body may hold: JSON whose numbers are whole; decimals stand as text. */
export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json }

/**
 * Canonical text of a value: RFC 8785 (sorted keys, no spaces), strings in Unicode NFC, whole numbers only.
 * The same value gives the same bytes on every device. Throws on a fraction, a lone surrogate or a non-JSON value.
 *
 * @example canonical({ b: 1, a: 'x' }) // '{"a":"x","b":1}'
 */
export function canonical(value: Json): string {
  if (value === null || typeof value === 'boolean') return String(value)
  if (typeof value === 'number') {
    if (!Number.isSafeInteger(value)) throw new Error(`${value} is not a whole number; write decimals as text.`)
    return JSON.stringify(value === 0 ? 0 : value)
  }
  if (typeof value === 'string') return canonicalString(value)
  if (Array.isArray(value)) return `[${value.map((item) => canonical(item as Json)).join(',')}]`
  if (typeof value !== 'object') throw new Error(`A ${typeof value} cannot stand in the journal.`)
  const members = Object.entries(value as { readonly [key: string]: Json })
    .filter(([, member]) => member !== undefined)
    .map(([key, member]) => [canonicalString(key), key.normalize('NFC'), member] as const)
    .sort(([, a], [, b]) => (a < b ? -1 : a > b ? 1 : 0))
  members.forEach(([text, key], place) => {
    if (place > 0 && members[place - 1]?.[1] === key) throw new Error(`The key ${text} stands twice.`)
  })
  return `{${members.map(([text, , member]) => `${text}:${canonical(member)}`).join(',')}}`
}

const loneSurrogate = /[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/

function canonicalString(text: string): string {
  if (loneSurrogate.test(text)) throw new Error('The text holds half a character (a lone surrogate).')
  return JSON.stringify(text.normalize('NFC'))
}

/** SHA-256 of the UTF-8 bytes of a text, in lower-case hex. */
export function hashText(text: string): string {
  return bytesToHex(sha256(utf8ToBytes(text)))
}

/** SHA-256 of bytes, in lower-case hex: the name of a photograph or paper. */
export function hashBytes(bytes: Uint8Array): string {
  return bytesToHex(sha256(bytes))
}
