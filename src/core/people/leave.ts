import { z } from 'zod'
import { addDays } from '#core/time/calendar-day.ts'
import { type ClosedDays, isOpen } from '#core/time/open-days.ts'

const day = z.string().regex(/^\d{4}-\d{2}-\d{2}$/, 'must be a day like 2026-12-25')

/** Somebody is away from the first day to the last, both included, and somebody else does what they owe. */
export const leaveSchema = z.strictObject({
  person: z.string().min(1).max(80),
  from: day,
  until: day,
  deputy: z.string().min(1).max(80),
})
export type Leave = z.infer<typeof leaveSchema>

/**
 * Who does, on that day, what a person owes: the person, or the deputy, or the deputy's deputy. Deputies who are away
 * in a ring leave it with the person: nobody's work is shown to nobody.
 *
 * @example standsFor('person-holm', '2026-12-24', leaves) // 'person-adeyemi'
 */
export function standsFor(person: string, day: string, leaves: readonly Leave[]): string {
  const seen = new Set<string>()
  for (let now = person; ; ) {
    if (seen.has(now)) return person
    seen.add(now)
    const away = leaves.findLast((leave) => leave.person === now && leave.from <= day && day <= leave.until)
    if (!away) return now
    now = away.deputy
  }
}

/**
 * The closed days of a span, each run of them as one: weekends and holidays on which somebody else stands in. Days on
 * which that person is away already are left as they are.
 *
 * @example closedRuns({ from: '2026-12-01', until: '2026-12-31' }, { weekdays: [6, 7], days: ['2026-12-25'] }, [])
 */
export function closedRuns(
  { from, until }: Pick<Leave, 'from' | 'until'>,
  closed: ClosedDays,
  away: readonly Pick<Leave, 'from' | 'until'>[],
): { from: string; until: string }[] {
  const runs: { from: string; until: string }[] = []
  for (let day = from; day <= until; day = addDays(day, 1)) {
    if (isOpen(day, closed) || away.some((leave) => leave.from <= day && day <= leave.until)) continue
    const last = runs.at(-1)
    if (last && addDays(last.until, 1) === day) last.until = day
    else runs.push({ from: day, until: day })
  }
  return runs
}
