import { call, Unreachable } from '../journal/api.ts'
import type { Enrolled } from './session.ts'

/**
 * True when the PIN is this person's. The server answers when it is there, and counts wrong tries; a tablet that
 * stands alone in theatre compares with the verifier it kept.
 */
export async function pinIsRight(person: Enrolled, pin: string): Promise<boolean> {
  try {
    await call('switch-person', { person: person.id, pin })
    return true
  } catch (error) {
    if (!(error instanceof Unreachable)) throw error
    return person.pin !== null && (await matches(person.pin, pin))
  }
}

async function matches({ salt, hash, cost }: NonNullable<Enrolled['pin']>, pin: string): Promise<boolean> {
  const { scryptAsync } = await import('@noble/hashes/scrypt.js')
  const made = await scryptAsync(pin, bytesOf(salt), { N: cost, r: 8, p: 1, dkLen: bytesOf(hash).length })
  return [...made].every((byte, index) => byte === bytesOf(hash)[index])
}

function bytesOf(hex: string): Uint8Array {
  return Uint8Array.from(hex.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16))
}
