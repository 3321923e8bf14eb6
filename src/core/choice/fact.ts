import type { Line } from '#core/journal/fold.ts'
import type { EarFact, FactValue } from './ear-fact.ts'

export const unknown: EarFact = { value: 'unknown', from: [], words: null }

/** A fact that was assessed, and the entries that say so. */
export function known(value: Exclude<FactValue, 'unknown'>, ...from: readonly (string | undefined)[]): EarFact {
  return { value, from: [...new Set(from.flatMap((id) => id ?? []))], words: null }
}

/** Whether something is on record: its absence is known too. */
export function onFile(is: boolean, ...from: readonly string[]): EarFact {
  return known(is ? 'yes' : 'no', ...from)
}

/** The latest entry whose answer was one: a later look without it does not undo it. */
export function lastAnswer<Body>(
  lines: readonly Line<Body>[],
  of: (body: Body) => 'yes' | 'no' | 'not-assessed',
): EarFact {
  const line = lines.findLast(({ body }) => of(body) !== 'not-assessed')
  if (!line) return unknown
  return known(of(line.body) === 'yes' ? 'yes' : 'no', line.header.id)
}
