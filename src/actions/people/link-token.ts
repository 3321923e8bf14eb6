import type { Secrets } from '../action.ts'

const tokenBytes = 32

/** What the address of a private link ends with: 32 bytes of chance as base64url (RFC 4648, section 5, unpadded). */
export function newLinkToken(secrets: Pick<Secrets, 'bytes'>): string {
  const text = btoa(String.fromCharCode(...secrets.bytes(tokenBytes)))
  return text.replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '')
}

/** Whether this can be a token at all: 43 letters hold 32 bytes. */
export function isLinkToken(token: string): boolean {
  return /^[\w-]{43}$/.test(token)
}
