import type { Case, Line } from '#core/journal/fold.ts'
import type { Estimate } from './estimate.ts'

/**
 * What a stay is reckoned with: the lines of the newest edition that was not declined, against the ceiling of the newest
 * that somebody had accepted by then. An edition that nobody answered moves no ceiling; only where none was accepted does
 * its own stand. Without a moment, as it stands now. Null while there is no estimate.
 *
 * @example agreedLimit(theCase, null)?.ceiling // { amount: '3700.00', currency: 'GBP' }
 */
export function agreedLimit(theCase: Case, until: string | null): Pick<Estimate, 'lines' | 'ceiling'> | null {
  const written = [...theCase.live('estimate')]
    .filter(({ at }) => until === null || at <= until)
    .sort((a, b) => a.body.edition - b.body.edition)
  const said = (line: Line<Estimate>, what: 'accepted' | 'declined') => {
    const { answer } = line.body
    return answer?.said === what && (until === null || answer.on.at <= until)
  }
  const newest = written.findLast((line) => !said(line, 'declined')) ?? written.at(-1)
  if (!newest) return null
  const accepted = written.findLast((line) => said(line, 'accepted'))
  return { lines: newest.body.lines, ceiling: (accepted ?? newest).body.ceiling }
}
