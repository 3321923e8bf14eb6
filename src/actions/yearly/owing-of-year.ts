import type { OperatedEar } from '#core/evidence/own/operated-ear.ts'
import { earsOfFrozen, rulesOfFrozen } from '#core/yearly/ears-of-frozen.ts'
import { earsOfYear } from '#core/yearly/freeze-year.ts'
import type { FrozenYear } from '#core/yearly/frozen-year.ts'
import { type NumberChanged, numbersChanged } from '#core/yearly/numbers-changed.ts'
import type { RegisterRow, Store } from '../store.ts'
import { type ChangedSince, changedSince } from './changed-since.ts'
import type { FrozenReport } from './frozen-reports.ts'

export type OwingCase = ChangedSince & { readonly stream: string }
export type Owing = { readonly cases: readonly OwingCase[]; readonly numbers: readonly NumberChanged[] }

type About = {
  readonly store: Store
  readonly clinic: string
  readonly rows: readonly RegisterRow[]
  readonly ears: readonly OperatedEar[]
}

/** The cases because of which a report owes an erratum, and the numbers of then and now; null while none does. */
export async function owingOf(
  { line: { body }, readUntil }: FrozenReport,
  frozen: FrozenYear | null,
  { store, clinic, rows, ears }: About,
): Promise<Owing | null> {
  const id = `report-erratum:${body.year}`
  const streams = (await store.owed(clinic)).filter((row) => row.id === id).map(({ stream }) => stream)
  if (streams.length === 0) return null
  const clinicEntries = await store.stream(clinic, 'clinic')
  const cases = await Promise.all(
    [...new Set(streams)].sort().map(async (stream): Promise<OwingCase> => {
      const joined = (await store.joined(clinic, stream)).filter((one) => one !== stream)
      const linked = (await Promise.all(joined.map((one) => store.stream(clinic, one)))).flat()
      const entries = await store.stream(clinic, stream)
      const about = { clinic, stream, rows, entries, linked, clinicEntries }
      return { stream, ...changedSince({ year: body.year, lookedAt: body.lookedAt, readUntil }, about) }
    }),
  )
  const numbers = frozen
    ? numbersChanged(earsOfFrozen(frozen), earsOfYear(ears, body.year), frozen.lookedAt, rulesOfFrozen(frozen))
    : []
  return { cases: cases.filter(({ changes }) => changes.length > 0), numbers }
}
