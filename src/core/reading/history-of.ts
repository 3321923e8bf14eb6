import { compareText } from '#core/journal/compare-text.ts'
import type { Case, Line } from '#core/journal/fold.ts'

/** One step in the life of an entry: written, corrected, taken back, or filed elsewhere. */
export type Step = {
  readonly line: Line
  readonly is: 'first' | 'correction' | 'settlement' | 'withdrawal' | 'refiling'
  /** What it stands in place of. */
  readonly of: readonly Line[]
}

/**
 * Everything that was ever written about one entry, oldest first: what it corrected, what corrected it, what took any
 * of them back. Nothing is left out because it no longer counts.
 *
 * @example historyOf(theCase, id).map(({ is }) => is) // ['first', 'correction']
 */
export function historyOf(theCase: Case, id: string): Step[] {
  const found = new Set<string>()
  const queue = [id]
  for (let next = queue.pop(); next !== undefined; next = queue.pop()) {
    const line = theCase.line(next)
    if (!line || found.has(next)) continue
    found.add(next)
    const { supersedes, withdraws } = line.header
    queue.push(...supersedes, ...line.supersededBy, ...line.withdrawnBy, ...(withdraws === null ? [] : [withdraws]))
  }
  return [...found]
    .flatMap((one) => theCase.line(one) ?? [])
    .sort((a, b) => compareText(a.header.writtenAt, b.header.writtenAt) || compareText(a.header.id, b.header.id))
    .map((line) => stepOf(line, theCase))
}

function stepOf(line: Line, theCase: Case): Step {
  const { kind, supersedes, withdraws } = line.header
  const targets = withdraws === null ? supersedes : [withdraws]
  const of = targets.flatMap((target) => theCase.line(target) ?? [])
  if (kind === 'refile') return { line, is: 'refiling', of }
  if (withdraws !== null) return { line, is: 'withdrawal', of }
  return { line, is: supersedes.length > 1 ? 'settlement' : supersedes.length === 1 ? 'correction' : 'first', of }
}
