import type { Questionnaire } from '#core/questionnaire/questionnaire.ts'
import { ownWords } from './known.ts'
import { questions as q } from './questions.ts'

/** Weeks 1 to 4 at home: what must not wait for the next visit. */
export const earlyHome = {
  id: 'early-home',
  edition: '1',
  ...ownWords,
  questions: [
    q.swelling,
    q.wound,
    q.eye,
    q.eyeSore,
    q.thirdLid,
    q.face,
    q.eating,
    q.medicines,
    q.head,
    q.phoneMe,
    q.anythingElse,
  ],
} as const satisfies Questionnaire
