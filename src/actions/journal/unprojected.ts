import { unprojectedInEnglish } from '#content/wording/unprojected.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OwedRow } from '../store.ts'

const longestFault = 300

/**
 * What is owed when the projector fails on a stream: what was done is recorded all the same, and nobody takes the old
 * lists for the new. It goes when the stream is projected again, by its next entry or by a rebuild.
 */
export function unprojected(stream: string, at: string, error: unknown): OwedRow {
  const fault = (error instanceof Error ? error.message : String(error)).slice(0, longestFault)
  const { what, why } = unprojectedInEnglish
  const due = { dueFrom: at, dueBy: at }
  return { stream, id: 'unprojected', what, who: 'desk', ...due, why: fill(why, { fault }), sources: [] }
}
