import { plainSaid, type SaidRow } from './said.ts'

/** One answer in which bodies differ, as each of them says it; null where a body does not hold it. */
export type Difference = {
  readonly at: string
  readonly label: string
  readonly says: readonly (string | null)[]
}

/**
 * The answers in which two or more readings of the same thing differ, in the order of the form. Rows are what `sayBody`
 * made of each.
 *
 * @example differences([rowsBefore, rowsAfter], nameOfEntry) // [{ label: 'Weight', says: ['18.6 kg …', '16.8 kg …'] }]
 */
export function differences(
  readings: readonly (readonly SaidRow[])[],
  nameOfEntry: (id: string) => string,
): Difference[] {
  const flat = readings.map((rows) => new Map(leaves(rows, '', nameOfEntry).map((leaf) => [leaf.at, leaf])))
  const places = [...new Set(flat.flatMap((leaf) => [...leaf.keys()]))]
  return places.flatMap((at) => {
    const found = flat.map((one) => one.get(at))
    const says = found.map((leaf) => leaf?.text ?? null)
    if (says.every((one) => one === says[0])) return []
    return [{ at, label: found.find((leaf) => leaf !== undefined)?.label ?? at, says }]
  })
}

type Leaf = { readonly at: string; readonly label: string; readonly text: string }

function leaves(rows: readonly SaidRow[], above: string, nameOfEntry: (id: string) => string): Leaf[] {
  return rows.flatMap((row) => {
    const label = above === '' ? row.label : `${above}, ${row.label}`
    if (row.said.kind === 'rows') return leaves(row.said.rows, label, nameOfEntry)
    return [{ at: row.at, label, text: plainSaid(row.said, nameOfEntry) }]
  })
}
