import { isLate } from './owed-item.ts'

export type Standing =
  /** Whole days since its limit. */
  { readonly kind: 'late'; readonly days: number } | { readonly kind: 'now' } | { readonly kind: 'later' }

/**
 * How an owed thing stands at the reader's moment: its limit has passed, it may be done now, or its time has not begun.
 *
 * @example standingOf({ dueFrom: '2026-03-10T00:00:00.000Z', dueBy: '2026-03-14T23:59:59.000Z' }, now) // { kind: 'now' }
 */
export function standingOf(due: { readonly dueFrom: string; readonly dueBy: string }, now: string): Standing {
  if (isLate(due, now)) {
    return { kind: 'late', days: Math.floor((Date.parse(now) - Date.parse(due.dueBy)) / 86_400_000) }
  }
  return { kind: Date.parse(due.dueFrom) <= Date.parse(now) ? 'now' : 'later' }
}
