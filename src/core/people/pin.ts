import { z } from 'zod'

/** What a device keeps of a PIN, so that it can be checked there without the server: scrypt with r 8, p 1, 32 bytes. */
export const pinVerifierSchema = z.strictObject({
  salt: z.string().regex(/^[0-9a-f]{32}$/),
  hash: z.string().regex(/^[0-9a-f]{64}$/),
  /** scrypt's N. */
  cost: z.int().min(1_024).max(1_048_576),
})
export type PinVerifier = z.infer<typeof pinVerifierSchema>

export const pinSchema = z.string().regex(/^\d{4,8}$/, 'must be 4 to 8 digits, like 5830')

/**
 * scrypt's N for a new PIN: 16 MiB, some tenths of a second on a tablet. A PIN is short, and whoever takes the tablet
 * apart can try them all: it changes who acts at a device where that person has signed in, and opens nothing else.
 */
export const pinCost = 16_384

/**
 * Whether two hashes are the same. Every character is compared, however early they differ.
 *
 * @example sameHash(made, verifier.hash)
 */
export function sameHash(a: string, b: string): boolean {
  let differing = a.length ^ b.length
  for (let at = 0; at < a.length; at += 1) differing |= a.charCodeAt(at) ^ b.charCodeAt(at)
  return differing === 0
}
