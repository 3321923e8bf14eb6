import { yearlyMethods } from '#content/evidence/yearly-method.ts'
import { type FrozenYear, type FrozenYearRefusal, readFrozen } from '#core/yearly/frozen-year.ts'
import { reportOf, reportText, type YearlyReport } from '#core/yearly/report-of.ts'
import { type Store, StoreError } from '../store.ts'
import type { FrozenReport } from './frozen-reports.ts'

export type Remade =
  | { readonly kind: 'remade'; readonly frozen: FrozenYear; readonly report: YearlyReport; readonly json: string }
  | { readonly kind: 'data-missing' | 'data-changed' }
  | { readonly kind: 'data-unread'; readonly because: FrozenYearRefusal['because'] }
  | { readonly kind: 'rows-differ'; readonly rows: number }
  | { readonly kind: 'method-unknown' }
  | { readonly kind: 'report-differs'; readonly made: string }

/**
 * The report of a year made again from its frozen data alone. Anything that is not as it was frozen is named: data that is
 * gone or changed, another number of rows, a method nobody knows here, a report that comes out otherwise.
 */
export async function remakeReport(store: Store, clinic: string, { line: { body } }: FrozenReport): Promise<Remade> {
  const text = await textOf(store, clinic, body.dataHash)
  if (text === null) return { kind: 'data-missing' }
  if (text === undefined) return { kind: 'data-changed' }
  const read = readFrozen(text, body.dataHash)
  if (read.kind === 'refusal') return { kind: 'data-unread', because: read.refusal.because }
  const frozen = read.answer
  if (frozen.rows.length !== body.rows) return { kind: 'rows-differ', rows: frozen.rows.length }
  if (!Object.hasOwn(yearlyMethods, frozen.method)) return { kind: 'method-unknown' }
  const report = reportOf(frozen, body.dataHash)
  const { text: json, hash } = reportText(report)
  return hash === body.reportHash ? { kind: 'remade', frozen, report, json } : { kind: 'report-differs', made: hash }
}

/** Null: not here. Undefined: the store has found it changed. */
async function textOf(store: Store, clinic: string, hash: string): Promise<string | null | undefined> {
  try {
    const file = await store.file(clinic, hash)
    return file ? new TextDecoder().decode(file.bytes) : null
  } catch (error) {
    if (error instanceof StoreError && error.code === 'broken') return undefined
    throw error
  }
}
