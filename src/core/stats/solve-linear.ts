/**
 * Solves a small system of linear equations by elimination with the largest pivot.
 *
 * @returns the solution, or nothing when the matrix is singular.
 * @example solveLinear([[2, 0], [0, 4]], [2, 2]) // [1, 0.5]
 */
export function solveLinear(
  matrix: readonly (readonly number[])[],
  right: readonly number[],
): readonly number[] | undefined {
  const rows = matrix.map((row, i) => [...row, right[i] ?? 0])
  const size = rows.length
  for (let column = 0; column < size; column += 1) {
    let best = column
    for (let i = column + 1; i < size; i += 1) {
      if (Math.abs(rows[i]?.[column] ?? 0) > Math.abs(rows[best]?.[column] ?? 0)) best = i
    }
    const pivot = rows[best]
    const swapped = rows[column]
    if (!pivot || !swapped || !(Math.abs(pivot[column] ?? 0) > 1e-300)) return undefined
    rows[best] = swapped
    rows[column] = pivot
    for (let i = column + 1; i < size; i += 1) {
      const row = rows[i]
      if (!row) continue
      const factor = (row[column] ?? 0) / (pivot[column] ?? 1)
      for (let k = column; k <= size; k += 1) row[k] = (row[k] ?? 0) - factor * (pivot[k] ?? 0)
    }
  }
  const solution = new Array<number>(size).fill(0)
  for (let i = size - 1; i >= 0; i -= 1) {
    const row = rows[i]
    let rest = row?.[size] ?? 0
    for (let k = i + 1; k < size; k += 1) rest -= (row?.[k] ?? 0) * (solution[k] ?? 0)
    solution[i] = rest / (row?.[i] ?? 1)
  }
  return solution
}
