import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { linesAbout } from '#core/journal/lines-about.ts'

const free = 'free-'

/** The checkpoint of a stamp that belongs to no point of the procedure: each is a thing of its own, never a second of another. */
export function freeCheckpoint(unique: string): string {
  return `${free}${unique}`
}

/** Whether a checkpoint is such a one. Example: `isFreeStamp('free-0190a7c2') // true`. */
export function isFreeStamp(checkpoint: string): boolean {
  return checkpoint.startsWith(free)
}

/** Every such stamp of an operation, oldest first. */
export function freeStampsOf(theCase: Case, operation: string): Line<BodyOf<'theatre-stamp'>>[] {
  return linesAbout(theCase, 'theatre-stamp', operation).filter(({ body }) => isFreeStamp(body.checkpoint))
}
