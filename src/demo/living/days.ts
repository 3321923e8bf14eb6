import { addDays } from '#core/time/calendar-day.ts'
import { type ClosedDays, isOpen } from '#core/time/open-days.ts'
import { closedAround } from './closed-days.ts'

/**
 * Days of a living case, counted from the day the practice is opened. What needs an open clinic is moved to an open
 * day; nothing that has happened ever falls on the day of opening itself, which may still be young.
 */
export class Days {
  readonly today: string
  readonly closed: ClosedDays

  constructor(today: string) {
    this.today = today
    this.closed = closedAround(today)
  }

  /** So many days ago, whatever day of the week that was: the ward and the telephone know no closed days. */
  ago(count: number): string {
    return addDays(this.today, -count)
  }

  /** The last open day that is at least so many days ago. */
  openAgo(count: number): string {
    let day = this.ago(count)
    while (!isOpen(day, this.closed)) day = addDays(day, -1)
    return day
  }

  /** The first open day from so many days ago on, never today or later. */
  openSince(count: number): string {
    let day = this.ago(count)
    while (!isOpen(day, this.closed)) day = addDays(day, 1)
    return day < this.today ? day : this.openAgo(count)
  }

  /** The so manieth open day after today. */
  openAhead(count: number): string {
    let day = this.today
    for (let left = count; left > 0; left -= isOpen(day, this.closed) ? 1 : 0) day = addDays(day, 1)
    return day
  }
}
