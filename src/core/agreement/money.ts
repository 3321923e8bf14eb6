import type { BodyOf } from '#core/journal/fold.ts'

export type Money = BodyOf<'estimate'>['ceiling']

/** An amount with its currency. Example: `sayMoney({ amount: '3400.00', currency: 'GBP' }) // '3400.00 GBP'`. */
export function sayMoney({ amount, currency }: Money): string {
  return `${amount} ${currency}`
}
