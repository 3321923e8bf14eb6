import { exchangeInEnglish as say } from '#content/wording/exchange.ts'
import { totalsOf } from '#core/agreement/estimate.ts'
import { fill } from '#core/outcome/finding.ts'
import type { Mapping } from './around.ts'
import { dateTime } from './fhir-time.ts'
import { answers, codedAnswer, textAnswer } from './questionnaire.ts'

const ask = say.questions

/** The lines, what they come to, the limit, and the answer; prices are no health record and stay in words. */
export const estimate: Mapping<'estimate'> = (line, around) => {
  const { body } = line
  const totals = totalsOf(body)
  const range = (low: typeof body.ceiling, high: typeof body.ceiling) =>
    fill(say.range, { low: low.amount, lowCurrency: low.currency, high: high.amount, highCurrency: high.currency })
  return [
    answers(line, around, { name: 'estimate', edition: String(body.edition) }, [
      ...body.lines.map(({ what, low, high }, place) => textAnswer(`line.${place + 1}`, what, range(low, high))),
      ...(totals.kind === 'answer'
        ? [textAnswer('estimate', ask.estimate, range(totals.answer.low, totals.answer.high))]
        : []),
      ...(body.deposit === null ? [] : [textAnswer('deposit', ask.deposit, fill(say.money, body.deposit))]),
      ...(body.paid === null
        ? []
        : [textAnswer('deposit-paid', ask['deposit-paid'], fill(say.money, body.paid.amount))]),
      textAnswer('ceiling', ask.ceiling, fill(say.money, body.ceiling)),
      textAnswer('valid-until', ask['valid-until'], body.validUntil),
      codedAnswer('answer', ask.answer, body.answer?.said ?? 'not-answered'),
      ...(body.answer === null ? [] : [textAnswer('answered-on', ask['answered-on'], dateTime(body.answer.on) ?? '')]),
    ]),
  ]
}
