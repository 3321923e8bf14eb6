import type { KnownBy } from '#core/choice/option.ts'
import { input, said, type Why, why } from './why.ts'

/**
 * Why a line stands on the worksheet of a choice: the entries it was read from, what they say in words, what waits for
 * it, and the publications behind it.
 *
 * @example whyChoice({ option: 'Deep flush', text, known, from: [], notes: [], nameOfEntry }).facts // the sources
 */
export function whyChoice(line: {
  readonly option: string
  readonly text: string
  readonly known: KnownBy
  readonly from: readonly string[]
  readonly notes: readonly string[]
  readonly nameOfEntry: (entry: string) => string
}): Why {
  return why({
    title: said('text', { text: line.option }),
    inputs: line.from.map((entry) => input('field', line.nameOfEntry(entry), { line: entry })),
    result: said('text', { text: line.text }),
    notes: line.notes.map((text) => said('text', { text })),
    facts: line.known,
  })
}
