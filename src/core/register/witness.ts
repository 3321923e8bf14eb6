import type { Case, Line } from '#core/journal/fold.ts'
import { rootOf } from '#core/owed/operations.ts'

/**
 * Whether nobody but its writer stands behind a line. Whoever wrote it is no witness; somebody else who looked at it
 * afterwards and amended it is a second name, also when the line still says that nobody was available.
 *
 * @example isUnwitnessed(line, theFold)
 */
export function isUnwitnessed(line: Line<{ readonly witness: string | null }>, theFold: Case): boolean {
  const writer = authorOf(theFold.line(rootOf(theFold, line.header.id)) ?? line)
  if (line.body.witness !== null && line.body.witness !== writer) return false
  const signer = authorOf(line)
  return signer === null || signer === writer
}

function authorOf({ header }: Line): string | null {
  return header.author.kind === 'person' ? header.author.person : null
}
