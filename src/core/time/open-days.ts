import { addDays, weekdayOf } from './calendar-day.ts'

/** When no visit can be given: days of the week (1 = Monday … 7 = Sunday) and single days. */
export type ClosedDays = { readonly weekdays: readonly number[]; readonly days: readonly string[] }

export type VisitWindow = { readonly from: string; readonly until: string }

/**
 * What happened to a window of days when closed days were taken out of it. `kept`: nothing. `narrowed`: its first or
 * last day was closed. `earlier`: the whole window was closed and the visit moved before it. `nowhere`: no open day is
 * left before the limit; the window stands and has to be met outside opening hours.
 */
export type MovedVisit = VisitWindow & { readonly moved: 'kept' | 'narrowed' | 'earlier' | 'nowhere' }

export function isOpen(day: string, closed: ClosedDays): boolean {
  return !closed.weekdays.includes(weekdayOf(day)) && !closed.days.includes(day)
}

/**
 * Moves a visit off closed days: to a later start or an earlier end inside its window, else to the last open day
 * before it; never past its limit, and never before `notBefore`.
 *
 * @example moveVisit({ from: '2026-03-14', until: '2026-03-15' }, { weekdays: [6, 7], days: [] }, '2026-03-02')
 * // { from: '2026-03-13', until: '2026-03-13', moved: 'earlier' }
 */
export function moveVisit(window: VisitWindow, closed: ClosedDays, notBefore: string): MovedVisit {
  const { from, until } = window
  let last = until
  while (last >= from && !isOpen(last, closed)) last = addDays(last, -1)
  if (last >= from) {
    let first = from
    while (!isOpen(first, closed)) first = addDays(first, 1)
    return { from: first, until: last, moved: first === from && last === until ? 'kept' : 'narrowed' }
  }
  while (last >= notBefore && !isOpen(last, closed)) last = addDays(last, -1)
  if (last >= notBefore) return { from: last, until: last, moved: 'earlier' }
  return { from, until, moved: 'nowhere' }
}
