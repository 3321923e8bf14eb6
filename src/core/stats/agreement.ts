import { answer, type Outcome, refuse } from '../outcome/outcome.ts'

/** Rows: what the first reader said; columns: what the second said of the same. */
export type ReadingTable = readonly (readonly number[])[]

/** `plain` counts only the same answer; the others count near misses of ordered grades in part. */
export const agreementWeights = ['plain', 'linear', 'quadratic'] as const
export type AgreementWeights = (typeof agreementWeights)[number]

export type Agreement = {
  /** The share of agreement, as weighed. */
  readonly observed: number
  /** The agreement that chance alone would bring. */
  readonly chance: number
  readonly kappa: number
  /** For an interval of kappa; nought where they always agree. */
  readonly error: number
  /** For a test of kappa against nought. */
  readonly errorWithoutAgreement: number
}

/** All answers of both fell into one grade: agreement by chance is whole, and nothing is left to divide by. */
export type NoKappa = { readonly because: 'one-grade-only' | 'no-cases-yet' }

/**
 * Cohen's kappa of two readers of the same cases, with large-sample errors. Rare findings depress it where readers nearly
 * always agree: say the share of agreement beside it.
 *
 * @example kappaOf([[20, 5], [10, 15]], 'plain') // kappa 0.4, error 0.127
 * Reference: Fleiss, Cohen & Everitt, Psychol Bull 1969;72:323–327 (remembered).
 */
export function kappaOf(table: ReadingTable, weights: AgreementWeights): Outcome<Agreement, NoKappa> {
  const all = table.flat().reduce((sum, count) => sum + count, 0)
  if (all === 0) return refuse({ because: 'no-cases-yet' })
  const shares = table.map((row) => row.map((count) => count / all))
  const rows = shares.map((row) => row.reduce((sum, share) => sum + share, 0))
  const columns = shares.map((_, column) => shares.reduce((sum, row) => sum + (row[column] ?? 0), 0))
  const weight = weightOf(weights, table.length)
  const over = (term: (row: number, column: number) => number) =>
    shares.reduce((sum, line, row) => sum + line.reduce((part, _, column) => part + term(row, column), 0), 0)
  const seen = (row: number, column: number) => shares[row]?.[column] ?? 0
  const byChance = (row: number, column: number) => (rows[row] ?? 0) * (columns[column] ?? 0)
  const observed = over((row, column) => weight(row, column) * seen(row, column))
  const chance = over((row, column) => weight(row, column) * byChance(row, column))
  if (chance === 1) return refuse({ because: 'one-grade-only' })
  const kappa = (observed - chance) / (1 - chance)
  const ofRow = rows.map((_, row) => columns.reduce((sum, share, column) => sum + weight(row, column) * share, 0))
  const ofColumn = columns.map((_, column) => rows.reduce((sum, share, row) => sum + weight(row, column) * share, 0))
  const mean = (row: number, column: number) => (ofRow[row] ?? 0) + (ofColumn[column] ?? 0)
  const spread = over((row, column) => seen(row, column) * (weight(row, column) - mean(row, column) * (1 - kappa)) ** 2)
  const none = over((row, column) => byChance(row, column) * (weight(row, column) - mean(row, column)) ** 2)
  const scale = (1 - chance) * Math.sqrt(all)
  // Where they always agree the two terms are equal, and rounding must not make a root of less than nought.
  const variance = kappa === 1 ? 0 : Math.max(0, spread - (kappa - chance * (1 - kappa)) ** 2)
  return answer({
    observed,
    chance,
    kappa,
    error: Math.sqrt(variance) / scale,
    errorWithoutAgreement: Math.sqrt(Math.max(0, none - chance ** 2)) / scale,
  })
}

function weightOf(weights: AgreementWeights, grades: number) {
  const far = grades - 1
  return (row: number, column: number) => {
    const apart = Math.abs(row - column) / far
    switch (weights) {
      case 'plain':
        return row === column ? 1 : 0
      case 'linear':
        return 1 - apart
      case 'quadratic':
        return 1 - apart * apart
    }
  }
}

/**
 * Agreement of many readers, as many for each case: how many of them gave each grade.
 *
 * @param counts one row for each case, adding up to the number of readers
 * @example manyReaders([[0, 0, 14], [0, 2, 12]])
 * Reference: Fleiss, Psychol Bull 1971;76:378–382 (remembered).
 */
export function manyReaders(
  counts: ReadingTable,
): Outcome<Pick<Agreement, 'observed' | 'chance' | 'kappa'> & { readonly perCase: readonly number[] }, NoKappa> {
  const readers = (counts[0] ?? []).reduce((sum, count) => sum + count, 0)
  if (readers < 2) return refuse({ because: 'no-cases-yet' })
  const perCase = counts.map(
    (row) => (row.reduce((sum, count) => sum + count * count, 0) - readers) / (readers * (readers - 1)),
  )
  const observed = perCase.reduce((sum, share) => sum + share, 0) / counts.length
  const grades = (counts[0] ?? []).map(
    (_, grade) => counts.reduce((sum, row) => sum + (row[grade] ?? 0), 0) / (readers * counts.length),
  )
  const chance = grades.reduce((sum, share) => sum + share * share, 0)
  if (chance === 1) return refuse({ because: 'one-grade-only' })
  return answer({ observed, chance, kappa: (observed - chance) / (1 - chance), perCase })
}
