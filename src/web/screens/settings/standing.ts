import type { RegisterRow } from '#actions/store.ts'
import type { ClinicRow } from '#core/journal/registers.ts'

export type Register = 'clinic' | 'price' | 'closed-day'
/** One row of a register as it stands. */
export type Standing<Body> = { readonly id: string; readonly body: Body }
export type Price = { readonly label: string; readonly low: string; readonly high: string; readonly currency: string }
export type ClosedDay = { readonly day: string; readonly because: string }
export type Bodies = { readonly clinic: ClinicRow; readonly price: Price; readonly 'closed-day': ClosedDay }

/** The rows of one register that were not taken away, as they were last written. */
export function standing<Name extends Register>(
  rows: readonly RegisterRow[],
  register: Name,
): readonly Standing<Bodies[Name]>[] {
  const newest = new Map<string, RegisterRow>()
  for (const row of rows.filter((one) => one.register === register)) {
    const before = newest.get(row.id)
    if (!before || before.revision < row.revision) newest.set(row.id, row)
  }
  return [...newest.values()].flatMap(({ id, body }) =>
    body === null ? [] : [{ id, body: body as unknown as Bodies[Name] }],
  )
}
