import type { Clock } from '#actions/store.ts'

/** A clock that stands still until it is moved. */
export class ClockForTests implements Clock {
  #ms: number

  constructor(at = '2026-03-02T09:00:00.000Z') {
    this.#ms = Date.parse(at)
  }

  now(): string {
    return new Date(this.#ms).toISOString()
  }

  pass(time: { readonly seconds?: number; readonly days?: number }): void {
    this.#ms += (time.seconds ?? 0) * 1_000 + (time.days ?? 0) * 86_400_000
  }
}
