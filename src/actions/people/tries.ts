import type { World } from '../action.ts'
import { Refused } from '../refused.ts'
import { hashOf, isEnrolledEver } from './caller.ts'

/** Three tries are free; then 1, 2, 4 … seconds, five minutes at most. It is a delay, never a lock. */
export function delayOfAccount(tries: number): number {
  return tries < 3 ? 0 : Math.min(2 ** (tries - 3) * 1_000, 300_000)
}

/** One stranger's address may try many logins, but not without end: from the twentieth try on it waits, a minute at most. */
export function delayOfAddress(tries: number): number {
  return tries < 20 ? 0 : Math.min(2 ** (tries - 20) * 1_000, 60_000)
}

/**
 * Counts a try at a login before the password is looked at, and refuses one that comes too early. A device where this
 * person has signed in before shows it with its session, also with one that has ended: its tries are counted apart, so
 * that no stranger can slow it down. Returns the keys to be forgotten when the try succeeds.
 */
export async function countSignInTry(world: Pick<World, 'accounts' | 'clock' | 'door'>, login: string) {
  const { accounts, door } = world
  const session = door.token === null ? undefined : await accounts.byToken(hashOf(door.token))
  const account = await accounts.byLogin(login)
  if (session && account && isEnrolledEver(session, account)) {
    const key = `device ${session.clinic} ${session.device} login ${login}`
    await countTry(world, key, delayOfAccount)
    return { session, account, keys: [key] }
  }
  const address = `address ${networkOf(door.address)}`
  const key = `${address} login ${login}`
  await countTry(world, address, delayOfAddress)
  await countTry(world, key, delayOfAccount)
  return { session, account, keys: [key, address] }
}

/** Counts a try; one that comes too early is refused with the time of the next. Keys are kept as hashes: a login may be a password typed in the wrong field. */
export async function countTry(
  { accounts, clock }: Pick<World, 'accounts' | 'clock'>,
  key: string,
  delayAfter: (tries: number) => number,
): Promise<void> {
  const now = clock.now()
  const again = await accounts.tryNow(hashOf(key), now, delayAfter)
  if (again === null) return
  const seconds = Math.ceil((Date.parse(again) - Date.parse(now)) / 1_000)
  const message = `Too many wrong tries: try again in ${seconds} ${seconds === 1 ? 'second' : 'seconds'}.`
  throw new Refused(429, 'too-many-tries', message, { again })
}

export async function forgetTries({ accounts }: Pick<World, 'accounts'>, keys: readonly string[]): Promise<void> {
  for (const key of keys) await accounts.forgetTries(hashOf(key))
}

/** An IPv4 address, or the 64 bits of an IPv6 address that name a network: inside it a device has any number. */
export function networkOf(address: string): string {
  const plain = address.replace(/%.*$/, '').toLowerCase()
  const mapped = /^::ffff:(\d+\.\d+\.\d+\.\d+)$/.exec(plain)
  if (mapped) return mapped[1] ?? plain
  if (!plain.includes(':')) return plain
  const [left = '', right = ''] = plain.split('::')
  const head = left.split(':').filter(Boolean)
  const tail = right.split(':').filter(Boolean)
  const groups = [...head, ...Array.from({ length: Math.max(0, 8 - head.length - tail.length) }, () => '0'), ...tail]
  return groups.slice(0, 4).join(':')
}
