/**
 * A new id of the shape of UUID version 7 (RFC 9562, section 5.7): 48 bits of time, the rest chance. Time and chance
 * come as arguments; the id is never read as a time again.
 *
 * @example entryId(Date.now(), crypto.getRandomValues(new Uint8Array(10)))
 */
export function entryId(milliseconds: number, chance: Uint8Array): string {
  if (!Number.isInteger(milliseconds) || milliseconds < 0 || milliseconds >= 2 ** 48) {
    throw new Error(`An id cannot hold the time ${milliseconds}.`)
  }
  if (chance.length < 10) throw new Error(`An id needs 10 random bytes, not ${chance.length}.`)
  const bytes = [...chance.slice(0, 10)]
  bytes[0] = 0x70 | ((bytes[0] ?? 0) & 0x0f)
  bytes[2] = 0x80 | ((bytes[2] ?? 0) & 0x3f)
  const hex = bytes.map((byte) => byte.toString(16).padStart(2, '0')).join('')
  const time = milliseconds.toString(16).padStart(12, '0')
  return `${time.slice(0, 8)}-${time.slice(8)}-${hex.slice(0, 4)}-${hex.slice(4, 8)}-${hex.slice(8)}`
}
