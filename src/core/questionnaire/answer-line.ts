import type { Side } from '#core/animal/species.ts'
import type { BodyOf, Case, Line } from '#core/journal/fold.ts'

export type AnswerLine = Line<BodyOf<'owner-answer'>>
export type GivenAnswer = AnswerLine['body']['answers'][number]

/** One time of asking about one operation. */
export type AskedOf = { readonly occasion: string; readonly questionnaire: string; readonly operation: string }

/**
 * The answers that stand for one operation at one time of asking, begun or sent; the last of them. Answers of the older
 * form name neither: they count from the day on which that time of asking had begun.
 *
 * @example answersFor(theCase, { occasion: 'month-12', questionnaire: 'twelve-months', operation }, from)?.body.finished
 */
export function answersFor(theCase: Case, asked: AskedOf, from: string): AnswerLine | undefined {
  return theCase.live('owner-answer').findLast(({ at, body }) => {
    if (body.occasion === null) return body.questionnaire === asked.questionnaire && at >= from
    return body.occasion === asked.occasion && body.ears.some(({ operation }) => operation === asked.operation)
  })
}

/**
 * What was answered to one question about one side, or about the animal; undefined where it was left out.
 *
 * @example givenTo(line.body.answers, 'swelling', 'LEFT')?.answer // 'no'
 */
export function givenTo(answers: readonly GivenAnswer[], question: string, side: Side | null): GivenAnswer | undefined {
  return answers.find((one) => one.question === question && one.side === side)
}
