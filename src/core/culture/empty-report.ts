import type { BodyOf } from '#core/journal/fold.ts'
import type { StoredIsolate } from '#core/journal/kinds/specimen-result.ts'

/** A report of which only this much is known: its way in is the keyboard, and nothing stands of standard or number. */
export const emptyReport = {
  came: 'typed',
  laboratory: null,
  accession: null,
  standard: null,
  isolates: [],
  tissue: null,
  text: null,
} as const satisfies Partial<BodyOf<'specimen-result'>>

/**
 * An isolate of drugs and values as printed; nothing is known of what they stand for.
 *
 * @example printedIsolate('1', 'Proteus mirabilis', [['marbofloxacin', '<=0.5 mg/L']])
 */
export function printedIsolate(
  key: string,
  organism: string,
  rows: readonly (readonly [drug: string, raw: string])[],
): StoredIsolate {
  const results = rows.map(([drug, raw]) => ({ drug, raw, agent: null, method: null, disk: null, category: null }))
  return { key, organism, species: null, amount: null, results, tests: [] }
}
