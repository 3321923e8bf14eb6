import { z } from 'zod'
import { type Agreement, agreementWeights, kappaOf, manyReaders } from '#core/stats/agreement.ts'
import { operation, whole } from './operation.ts'

const rows = z.array(z.array(whole(0)).min(2)).min(1)
const hasCases = (table: readonly (readonly number[])[]) => table.some((row) => row.some((count) => count > 0))

export const agreement = operation(
  'agreement',
  {
    table: rows
      .min(2)
      .refine((table) => table.every(({ length }) => length === table.length), {
        error: 'must have as many columns as rows: one for each grade.',
      })
      .refine(hasCases, { error: 'must hold at least one case.' }),
  },
  ({ table }) => {
    const all = table.flat().reduce((sum, count) => sum + count, 0)
    const same = table.reduce((sum, row, grade) => sum + (row[grade] ?? 0), 0)
    return {
      cases: all,
      agreed: same / all,
      // Two grades only: what kappa would be if both grades were equally common.
      prevalenceAdjusted: table.length === 2 ? (2 * same) / all - 1 : null,
      ...Object.fromEntries(
        agreementWeights.map((weights) => {
          const found = kappaOf(table, weights)
          return [weights, found.kind === 'answer' ? said(found.answer) : { refusal: found.refusal.because }]
        }),
      ),
    }
  },
)

function said({ observed, chance, kappa, error, errorWithoutAgreement }: Agreement) {
  return { observed, chance, kappa, error, errorWithoutAgreement }
}

export const readers = operation(
  'many-readers',
  {
    counts: rows
      .refine((counts) => counts.every((row) => row.length === counts[0]?.length), {
        error: 'must have one column for each grade in every row.',
      })
      .refine((counts) => new Set(counts.map((row) => row.reduce((sum, count) => sum + count, 0))).size === 1, {
        error: 'must add up to the same number of readers in every row.',
      })
      .refine((counts) => (counts[0] ?? []).reduce((sum, count) => sum + count, 0) >= 2, {
        error: 'must hold the answers of at least two readers.',
      }),
  },
  ({ counts }) => {
    const found = manyReaders(counts)
    return found.kind === 'refusal'
      ? { refusal: found.refusal.because }
      : { ...found.answer, perCase: [...found.answer.perCase] }
  },
)
