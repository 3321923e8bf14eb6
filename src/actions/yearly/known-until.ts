import { ownCounting } from '#content/evidence/own-counting.ts'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { type OperatedEar, operatedEarsOf } from '#core/evidence/own/operated-ear.ts'
import type { Row } from '#core/journal/journal-file.ts'
import { caseFile } from '../journal/case-file.ts'
import type { Store } from '../store.ts'

/**
 * The same ears with only what was seen of them up to a day, read from their cases again: the lists keep what is known by
 * now.
 */
export async function earsKnownUntil(
  until: string,
  ears: readonly OperatedEar[],
  { store, clinic }: { readonly store: Store; readonly clinic: string },
): Promise<OperatedEar[]> {
  const rows = (await store.registers(clinic)) as readonly Row[]
  const clinicEntries = await store.stream(clinic, 'clinic')
  const found = new Map<string, OperatedEar>()
  for (const stream of new Set(ears.map((ear) => ear.stream))) {
    const entries = await store.after(clinic, await store.joined(clinic, stream), 0)
    const file = caseFile({ clinic, rows, entries: [...clinicEntries, ...entries] }, stream)
    for (const ear of operatedEarsOf(file, { ...owedRules, counting: ownCounting }, until))
      found.set(`${stream} ${ear.operation}`, ear)
  }
  return ears.map((ear) => {
    const then = found.get(`${ear.stream} ${ear.operation}`)
    if (!then) throw new Error(`${ear.stream}: operation ${ear.operation} is in the lists and not in its case.`)
    return then
  })
}
