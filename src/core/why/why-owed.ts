import type { OwedItem } from '#core/owed/owed-item.ts'
import { type OwedWording, sayOwed } from '#core/owed/owed-wording.ts'
import { sayMoment } from '#core/time/moment.ts'
import { input, said, type Why, type WhyPolicy, type WhySaid, why } from './why.ts'

/**
 * Why something falls due when it does: the interval it was counted by, what moved it, and the house policy when one
 * stands in place of the usual interval.
 *
 * @example sayWhy(whyOwed(item, owedInEnglish), whyInEnglish).policy // 'House policy owed.suture-check: …'
 */
export function whyOwed(item: OwedItem, wording: OwedWording): Why {
  const { what } = sayOwed(item, wording)
  const about = { from: sayDue(item.dueFrom, item), until: sayDue(item.dueBy, item) }
  const reasons = item.why
    .filter(({ code }) => code !== 'house-policy')
    .map((one): WhySaid => said('text', { text: sayOwed({ ...item, why: [one] }, wording).why }))
  return why({
    title: said('title-owed', { what }),
    inputs: [input('due-from', about.from), input('due-by', about.until)],
    formula: reasons,
    result: said(about.from === about.until ? 'due' : 'window', about),
    facts: item.facts,
    policy: policyOf(item),
  })
}

function sayDue(at: string, { zone, precision }: OwedItem): string {
  return sayMoment({ at, zone, precision, by: 'person' })
}

function policyOf({ why: reasons }: OwedItem): WhyPolicy | null {
  const about = reasons.find(({ code }) => code === 'house-policy')?.about
  if (!about) return null
  const { policy = '', value = '', by = '', on = '', because = '' } = about
  return { name: policy, value, by, on, because }
}
