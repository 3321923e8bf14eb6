import type { Side } from '#core/animal/species.ts'
import type { AnswerLine } from './answer-line.ts'
import { type QuestionRules, questionnaireOf, type ReportId } from './questionnaire.ts'

/** Something an owner reported, of one ear or of the animal. */
export type Report = { readonly report: ReportId; readonly side: Side | null }

/**
 * What of these answers somebody of the house has to act on; also of answers that were only begun, because an owner who
 * ticked a swelling has told us. Nothing for an edition that this program does not know.
 *
 * @example reportsIn(line.body, rules) // [{ report: 'swelling', side: 'LEFT' }]
 */
export function reportsIn(body: AnswerLine['body'], rules: QuestionRules): Report[] {
  const questions = questionnaireOf(rules, body.questionnaire, body.edition)?.questions ?? []
  return body.answers.flatMap(({ question, side, answer }) => {
    const report = questions.find(({ id }) => id === question)?.reports[answer]
    return report ? [{ report, side }] : []
  })
}

/**
 * Whether these answers ask for an answer of ours: something was written in words, or a call was asked for.
 *
 * @example asksForAnswer({ ...body, answers: [{ question: 'phone-me', side: null, answer: 'yes', asked: null, said: null }] }, rules)
 */
export function asksForAnswer(body: AnswerLine['body'], rules: QuestionRules): boolean {
  const questions = questionnaireOf(rules, body.questionnaire, body.edition)?.questions ?? []
  return body.answers.some(({ question, answer }) => {
    const known = questions.find(({ id }) => id === question)
    return known !== undefined && (known.choices.length === 0 || known.asksForCall.includes(answer))
  })
}
