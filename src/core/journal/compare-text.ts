/** The order of texts by their code units, the same on every machine: instants, ids, keys. For `sort`. */
export function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0
}
