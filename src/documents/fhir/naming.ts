import { hashText } from '#core/journal/canonical.ts'

/** A resource that is an entry keeps the entry's id. */
export function entryUuid(entry: string): string {
  return entry.toLowerCase()
}

/**
 * A resource that no entry names alone gets a UUID of version 8 (RFC 9562, 5.8) from what it stands for: the same
 * thing has the same id in every export.
 */
export function derivedUuid(...parts: readonly string[]): string {
  const hash = hashText(JSON.stringify(['quiet-ear', ...parts]))
  const variant = ((Number.parseInt(hash.charAt(16), 16) & 0x3) | 0x8).toString(16)
  return [
    hash.slice(0, 8),
    hash.slice(8, 12),
    `8${hash.slice(13, 16)}`,
    variant + hash.slice(17, 20),
    hash.slice(20, 32),
  ].join('-')
}

export function urn(uuid: string): string {
  return `urn:uuid:${uuid}`
}
