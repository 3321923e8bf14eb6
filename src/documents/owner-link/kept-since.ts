import type { Moment } from '#core/time/moment.ts'
import type { Fields } from '../owner-page/asked.ts'

/**
 * Since when what was sent had waited on the phone, as the phone says. Its clock is nobody’s here, so a time that cannot be
 * right is none.
 *
 * @example keptSinceOf(new URLSearchParams('kept-since=2026-03-04T08:00:00.000Z'), now)?.at // '2026-03-04T08:00:00.000Z'
 */
export function keptSinceOf(form: Fields, now: Moment): Moment | null {
  const text = form.get('kept-since') ?? ''
  const at = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}\.\d{3}Z$/.test(text) ? Date.parse(text) : Number.NaN
  if (Number.isNaN(at) || at > Date.parse(now.at)) return null
  return { at: new Date(at).toISOString(), zone: now.zone, precision: 'minute', by: 'clock' }
}
