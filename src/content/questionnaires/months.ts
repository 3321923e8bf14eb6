import type { Questionnaire } from '#core/questionnaire/questionnaire.ts'
import { ownWords } from './known.ts'
import { questions as q } from './questions.ts'

/** After 3 and 6 months: what comes late and is seen at home first. */
export const months = {
  id: 'months',
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
    q.thirdLid,
    q.elsewhere,
    q.mouth,
    q.head,
    q.phoneMe,
    q.anythingElse,
  ],
} as const satisfies Questionnaire
