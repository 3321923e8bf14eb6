import type { Entry } from '#core/journal/entry.ts'
import { entryId } from '#core/journal/entry-id.ts'

/**
 * This device and its clock. The server's time is measured whenever an answer brings it, so that an entry can say how
 * far this clock was off and how old that measurement is.
 */
export const deviceId = readDeviceId()
const boot = newId()
const began = performance.now()
let measured: { readonly ms: number; readonly at: number } | null = null

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
}

/** What the server's clock shows at an instant of ours, as far as it was measured since this page was opened. */
export function asServer(now: string): string {
  return measured === null ? now : new Date(Date.parse(now) + measured.ms).toISOString()
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
