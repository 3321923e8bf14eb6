import { type Draft, draftAt, isRecord, textIn, withDraftAt } from './draft.ts'
import { moneyAsTyped } from './draft-of.ts'
import type { Place } from './refusal.ts'

/** A row of the clinic's own price list. */
export type ListPrice = {
  readonly label: string
  readonly low: string
  readonly high: string
  readonly currency: string
}

/**
 * The draft of an estimate with one more line at a price of the list, as text that can be typed over: in the first line in
 * which nothing stands yet, otherwise below the others. Which part of the course it is, a person still says.
 *
 * @example withPricedLine({ lines: [] }, { label: 'Check', low: '48.00', high: '62.00', currency: 'GBP' }, place)
 */
export function withPricedLine(draft: Draft, price: ListPrice, place: Place): Draft {
  const given = draftAt(draft, 'lines')
  const lines = Array.isArray(given) ? given : []
  const empty = lines.findIndex(isUntouched)
  const at = empty === -1 ? lines.length : empty
  const before = lines[at]
  const money = (amount: string) => moneyAsTyped({ amount, currency: price.currency }, place)
  const line = {
    ...(isRecord(before) ? before : { part: '' }),
    what: price.label,
    low: money(price.low),
    high: money(price.high),
  }
  return withDraftAt(draft, 'lines', [...lines.slice(0, at), line, ...lines.slice(at + 1)])
}

function isUntouched(line: Draft): boolean {
  return ['what', 'low', 'high'].every((name) => textIn(draftAt(line, name)).trim() === '')
}
