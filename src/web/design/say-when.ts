import { sayMoment } from '#core/time/moment.ts'

/** An instant as people here read it: day, month as a word, year, and the clock of the clinic's zone. */
export function sayWhen(at: string, zone: string): string {
  return sayMoment({ at, zone, precision: 'minute', by: 'clock' })
}

export function sayDay(at: string, zone: string): string {
  return sayMoment({ at, zone, precision: 'day', by: 'clock' })
}
