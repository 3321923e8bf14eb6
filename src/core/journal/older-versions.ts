import type { Case } from './fold.ts'

/**
 * Every version an entry replaced, and those that these replaced.
 *
 * @example olderVersions(corrected.header.id, theCase) // [first.header.id]
 */
export function olderVersions(id: string, theCase: Pick<Case, 'line'>): string[] {
  const found = new Set<string>()
  const waiting = [id]
  for (let one = waiting.pop(); one !== undefined; one = waiting.pop()) {
    for (const before of theCase.line(one)?.header.supersedes ?? []) {
      if (found.has(before)) continue
      found.add(before)
      waiting.push(before)
    }
  }
  return [...found]
}
