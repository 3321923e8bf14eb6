import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { settingOf } from '#core/owed/setting.ts'
import type { AnswerLine } from '#core/questionnaire/answer-line.ts'
import { type Asking, askingsOf, isOpen } from '#core/questionnaire/askings.ts'

/** Every time of asking of one case, by our questions and windows. `now` is UTC with milliseconds. */
export function askingsOfCase(file: CaseFile, now: string): Asking[] {
  return askingsOf(settingOf(file, procedures, { rules: owedRules }), now)
}

/**
 * The same for one person of the household: what another one saved or sent is theirs. A time of asking that another one
 * answered is answered, and shows nothing of it.
 */
export function askingsOfContact(file: CaseFile, now: string, contact: string): Asking[] {
  return askingsOfCase(file, now).map((one) => {
    if (one.answers === null || isOf(one.answers, contact)) return one
    return { ...one, answers: null, state: one.state === 'begun' ? 'now' : one.state }
  })
}

function isOf({ body, header: { author } }: AnswerLine, contact: string): boolean {
  return body.contact === contact || (author.kind === 'owner-link' && author.contact === contact)
}

/** Whether there is anything for an owner on the page of the questions: to answer, answered, or still to come. */
export function hasQuestions(file: CaseFile, now: string): boolean {
  return askingsOfCase(file, now).some((one) => isOpen(one) || one.state === 'answered' || one.state === 'later')
}
