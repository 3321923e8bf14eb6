import type { Triage } from '#core/referral/triage.ts'
import { input, said, type Why, why } from './why.ts'

/**
 * Why a referral is this urgent: each red flag with how soon it is seen, and what nobody asked yet.
 *
 * @example whyUrgency(triage(answers, rules)).result // { code: 'urgency-is', about: { urgency: 'today' } }
 */
export function whyUrgency({ suggested, atLeast, because, askNow }: Triage): Why {
  return why({
    title: said('title-urgency'),
    inputs: because.flatMap((reason) =>
      reason.kind === 'sign'
        ? [input('red-flag', reason.fact.value.urgency, { of: reason.sign, fact: reason.fact })]
        : [],
    ),
    formula: because.flatMap((reason) =>
      reason.kind === 'sign'
        ? [said('urgency-of-sign', { sign: reason.sign, because: reason.fact.value.because })]
        : reason.kind === 'flat-faced'
          ? [said('text', { text: reason.fact.value })]
          : [],
    ),
    result:
      suggested === null ? said('urgency-open', { urgency: atLeast }) : said('urgency-is', { urgency: suggested }),
    notes: askNow.flatMap((ask) =>
      ask.kind === 'sign' ? [said('urgency-least', { sign: ask.sign, urgency: ask.could })] : [],
    ),
    facts: because.flatMap((reason) => (reason.kind === 'flat-faced' ? [reason.fact] : [])),
  })
}
