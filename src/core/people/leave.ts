import { z } from 'zod'

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
