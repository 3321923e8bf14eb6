import { scrypt } from '@noble/hashes/scrypt.js'
import { bytesToHex, hexToBytes } from '@noble/hashes/utils.js'
import { z } from 'zod'

/** What a device keeps of a PIN, so that it can be checked without the server: scrypt with r 8, p 1. */
export const pinVerifierSchema = z.strictObject({
  salt: z.string().regex(/^[0-9a-f]{32}$/),
  hash: z.string().regex(/^[0-9a-f]{64}$/),
  /** scrypt's N. */
  cost: z.int().min(1_024).max(1_048_576),
})
export type PinVerifier = z.infer<typeof pinVerifierSchema>

export const pinSchema = z.string().regex(/^\d{4,8}$/, 'must be 4 to 8 digits, like 5830')

/** 32 MiB of memory and about a tenth of a second on a tablet. A PIN is short: it switches people, it opens no account. */
const pinCost = 32_768

/**
 * The verifier of a new PIN, with 16 random bytes of salt.
 *
 * @example pinVerifier('5830', salt) // { salt: '…', hash: '…', cost: 32768 }
 * @see RFC 7914, The scrypt Password-Based Key Derivation Function
 */
export function pinVerifier(pin: string, salt: Uint8Array): PinVerifier {
  return { salt: bytesToHex(salt), hash: bytesToHex(derive(pin, salt, pinCost)), cost: pinCost }
}

/**
 * Whether the PIN is the one of the verifier. Every byte is compared, however early they differ.
 *
 * @example pinMatches('5830', verifier)
 * @see RFC 7914
 */
export function pinMatches(pin: string, { salt, hash, cost }: PinVerifier): boolean {
  const wanted = hexToBytes(hash)
  const given = derive(pin, hexToBytes(salt), cost)
  let differing = wanted.length ^ given.length
  for (const [at, byte] of given.entries()) differing |= byte ^ (wanted[at] ?? 0)
  return differing === 0
}

function derive(pin: string, salt: Uint8Array, cost: number): Uint8Array {
  return scrypt(pin, salt, { N: cost, r: 8, p: 1, dkLen: 32 })
}
