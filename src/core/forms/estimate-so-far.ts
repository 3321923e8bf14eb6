import { totalsOf } from '#core/agreement/estimate.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { type Draft, draftAt, isKept, textIn } from './draft.ts'
import { readMoney } from './read-leaf.ts'
import type { Place } from './refusal.ts'

type Money = BodyOf<'estimate'>['ceiling']

export type EstimateSoFar = {
  /** What the lines that can be read come to; null while two currencies stand among them. */
  readonly totals: { readonly low: Money; readonly high: Money } | null
  /** Lines in which a price is missing or cannot be read: they are in no sum. */
  readonly open: number
  readonly ceiling: Money | null
}

/**
 * The sums of an estimate while it is being filled in; null before one line has both prices.
 *
 * @example estimateSoFar({ lines: [{ low: '100', high: '150.50' }], ceiling: '' }, place) // 100 to 150.50 GBP
 */
export function estimateSoFar(draft: Draft | undefined, place: Place): EstimateSoFar | null {
  const given = draftAt(draft, 'lines')
  const all = Array.isArray(given) ? given : []
  const whole = all.flatMap((line) => {
    const [low, high] = [moneyIn(draftAt(line, 'low'), place), moneyIn(draftAt(line, 'high'), place)]
    return low && high ? [{ part: 'other' as const, what: '', low, high }] : []
  })
  const [first] = whole
  if (!first) return null
  const totals = totalsOf({ lines: whole, ceiling: first.low })
  return {
    totals: totals.kind === 'answer' ? totals.answer : null,
    open: all.length - whole.length,
    ceiling: moneyIn(draftAt(draft, 'ceiling'), place),
  }
}

function moneyIn(draft: Draft | undefined, place: Place): Money | null {
  if (isKept(draft)) return draft.stands as unknown as Money
  const read = readMoney(textIn(draft), place)
  return read.kind === 'answer' ? (read.answer as unknown as Money) : null
}
