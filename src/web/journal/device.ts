import type { Entry } from '#core/journal/entry.ts'
import { entryId } from '#core/journal/entry-id.ts'

/**
 * This device and its clock. The server's time is measured whenever an answer brings it, so that an entry can say how
 * far this clock was off and how old that measurement is.
 */
export const deviceId = readDeviceId()
const boot = newId()
const began = performance.now()
/** After this long nobody knows whether this clock was set again meanwhile. */
const longestTrusted = 24 * 3_600_000
let measured = formerMeasurement()

/** A new id; `crypto.randomUUID` does not exist on a clinic network without TLS, random values do. */
export function newId(): string {
  return entryId(Date.now(), crypto.getRandomValues(new Uint8Array(10)))
}

function readDeviceId(): string {
  const known = localStorage.getItem('device')
  if (known) return known
  const made = `device-${newId()}`
  localStorage.setItem('device', made)
  return made
}

/** Notes how far the server's clock is from ours; `sentAt` and now bracket the moment the server read its clock. */
export function measureClock(serverTime: string, sentAt: number): void {
  const server = Date.parse(serverTime)
  if (Number.isNaN(server)) return
  const middle = (sentAt + Date.now()) / 2
  measured = { ms: Math.round(server - middle), at: performance.now() }
  localStorage.setItem('clock', `${measured.ms} ${Date.now()}`)
}

/**
 * What was measured before this page was opened: a tablet whose battery died without the network goes on with the
 * clock it had. None that is a day old, or from later than now, because then the clock was set.
 */
function formerMeasurement(): { readonly ms: number; readonly at: number } | null {
  const [ms, at] = (localStorage.getItem('clock') ?? '').split(' ').map(Number)
  if (!Number.isInteger(ms) || !Number.isInteger(at)) return null
  const age = Date.now() - Number(at)
  return age >= 0 && age < longestTrusted ? { ms: Number(ms), at: performance.now() - age } : null
}

/** What the server's clock shows at an instant of ours, as far as it was measured. */
export function asServer(now: string): string {
  return measured === null ? now : new Date(Date.parse(now) + measured.ms).toISOString()
}

/** What our clock shows, or showed, at an instant of the server's. */
export function asHere(server: string): string {
  return measured === null ? server : new Date(Date.parse(server) - measured.ms).toISOString()
}

export function deviceNow(): Entry['device'] {
  return {
    id: deviceId,
    boot,
    wallClock: new Date().toISOString(),
    monotonicMs: Math.max(0, Math.round(performance.now() - began)),
    offset: measured && { ms: measured.ms, ageMs: Math.max(0, Math.round(performance.now() - measured.at)) },
  }
}
