import type { BodyOf } from '#core/journal/fold.ts'
import { prices } from './prices.ts'

type Lines = BodyOf<'cost-assumption'>['lines']
type Often = readonly [atLeast: number, atMost: number, every: 'year' | 'month']

/** Lines at the invented prices: what, how often. */
export function atOurPrices(often: Readonly<Partial<Record<keyof typeof prices, Often>>>): Lines {
  return Object.entries(often).map(([row, [atLeast, atMost, every]]) => {
    const { label, low, high, currency } = prices[row as keyof typeof prices]
    const price = { row, low: { amount: low, currency }, high: { amount: high, currency } }
    return { what: label, atLeast, atMost, every, price }
  })
}
