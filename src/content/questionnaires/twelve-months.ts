import type { Questionnaire } from '#core/questionnaire/questionnaire.ts'
import { ownWords } from './known.ts'
import { questions as q } from './questions.ts'

/** After a year: how it is, and what the owner would do again. */
export const twelveMonthsQuestions = {
  id: 'twelve-months',
  edition: '1',
  ...ownWords,
  questions: [
    q.earNow,
    q.swelling,
    q.discharge,
    q.touch,
    q.face,
    q.eye,
    q.eyeSore,
    q.elsewhere,
    q.mouth,
    q.head,
    q.hearing,
    q.chooseAgain,
    q.phoneMe,
    q.anythingElse,
  ],
} as const satisfies Questionnaire
