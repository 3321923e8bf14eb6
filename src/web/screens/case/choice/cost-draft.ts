import type { CostLine } from '#core/choice/cost.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import type { Price, Standing } from '../../settings/standing.ts'

/** Said of something for which the list holds no price: the sum is unknown then. */
export const noPrice = 'no-price'

export type LineDraft = {
  readonly what: string
  /** A row of the price list, `no-price`, or empty while nobody chose. */
  readonly price: string
  readonly atLeast: string
  readonly atMost: string
  readonly every: CostLine['every'] | null
}
export type CostDraft = readonly LineDraft[]

export const emptyLine: LineDraft = { what: '', price: '', atLeast: '', atMost: '', every: null }

export function costDraftOf(kept: BodyOf<'cost-assumption'> | null): CostDraft {
  if (!kept) return [emptyLine]
  return kept.lines.map(({ what, price, atLeast, atMost, every }) => ({
    what,
    price: price?.row ?? noPrice,
    atLeast: String(atLeast),
    atMost: String(atMost),
    every,
  }))
}

/** A whole number of times; null while it is none. */
export function timesOf(text: string): number | null {
  const typed = text.trim()
  return /^\d{1,3}$/.test(typed) && Number(typed) <= 366 ? Number(typed) : null
}

/** The lines at the prices of the list as they stand now; null while one of them is open. */
export function linesOfDraft(draft: CostDraft, prices: readonly Standing<Price>[]): CostLine[] | null {
  const lines = draft.flatMap(({ what, price, atLeast, atMost, every }): CostLine[] => {
    const [low, high] = [timesOf(atLeast), timesOf(atMost)]
    const row = prices.find(({ id }) => id === price)
    if (what.trim() === '' || low === null || high === null || every === null) return []
    if (!row && price !== noPrice) return []
    return [{ what: what.trim(), atLeast: low, atMost: high, every, price: row ? pricedBy(row) : null }]
  })
  return lines.length === draft.length ? lines : null
}

function pricedBy({ id, body: { low, high, currency } }: Standing<Price>): NonNullable<CostLine['price']> {
  return { row: id, low: { amount: low, currency }, high: { amount: high, currency } }
}
