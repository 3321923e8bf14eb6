import type { Side } from '#core/animal/species.ts'
import type { Provenance } from '#core/evidence/sourced.ts'
import { type DoneOperation, windowDays, windowOf } from '#core/owed/follow-up.ts'
import type { Setting } from '#core/owed/setting.ts'
import { wholeDays } from '#core/owed/setting.ts'
import { procedureNamed } from '#core/procedures/procedure.ts'
import { dayOf, type Span } from '#core/time/calendar-day.ts'
import { type AnswerLine, answersFor } from './answer-line.ts'
import { type Occasion, type Questionnaire, questionnaireOf } from './questionnaire.ts'

export type AskedEar = { readonly side: Side; readonly operation: string }

/**
 * How a time of asking stands. `begun`: saved to go on later. `passed`: its window is over and nobody answered, so that
 * nothing is known of it. `over`: a death, or the same ear was operated again.
 */
export type AskingState = 'later' | 'now' | 'begun' | 'answered' | 'passed' | 'over'

/** One time of asking about the ears that were operated on one day. */
export type Asking = {
  /** The same as long as these ears are asked about at this time. */
  readonly key: string
  readonly occasion: Occasion
  readonly questionnaire: Questionnaire
  readonly ears: readonly AskedEar[]
  readonly dayOfOperation: string
  readonly from: string
  readonly until: string
  readonly window: Provenance
  readonly state: AskingState
  /** The answers that stand, begun or sent. */
  readonly answers: AnswerLine | null
}

/**
 * Every time at which the owner of this animal is asked, oldest first: from the operations that were done, the windows of
 * the follow-up and what the house set for itself. After a death none is open any more, from that moment on.
 *
 * @example askingsOf(settingOf(file, procedures, { rules: owedRules }), now).filter(isOpen)
 */
export function askingsOf(setting: Setting, now: string): Asking[] {
  const { zone, rules, operations } = setting
  const done = operations.flatMap((operation): DoneOperation[] =>
    operation.done ? [{ ...operation, dayOfOperation: dayOf({ at: operation.moment.at, zone }) }] : [],
  )
  const days = [...new Set(done.map(({ dayOfOperation }) => dayOfOperation))]
  const all = days.flatMap((day) => {
    const together = done.filter(({ dayOfOperation }) => dayOfOperation === day)
    return rules.questions.occasions.flatMap((occasion) => asking(occasion, together, setting, now))
  })
  return all.sort((a, b) => (a.from < b.from ? -1 : a.from > b.from ? 1 : a.key < b.key ? -1 : 1))
}

/** Whether the owner may answer it now. */
export function isOpen({ state }: Pick<Asking, 'state'>): boolean {
  return state === 'now' || state === 'begun'
}

function asking(occasion: Occasion, together: readonly DoneOperation[], setting: Setting, now: string): Asking[] {
  const questionnaire = questionnaireOf(setting.rules.questions, occasion.questionnaire, occasion.edition)
  const [first] = together
  const window = first && windowFor(occasion, first, setting)
  if (!questionnaire || !first || !window) return []
  const days = windowDays(window.span, first.dayOfOperation)
  const { dueFrom: from, dueBy: until } = wholeDays(days, setting.zone)
  // An ear that was operated again before this time is asked about in the course of the newer operation.
  const again = ({ side, moment }: DoneOperation) =>
    setting.operations.some((one) => one.done && one.side === side && one.moment.at > moment.at && one.moment.at <= now)
  const standing = together.filter((operation) => !again(operation))
  const asked = standing.length > 0 ? standing : together
  const { theCase } = setting.file
  const answers =
    asked
      .map(({ id }) =>
        answersFor(theCase, { occasion: occasion.id, questionnaire: questionnaire.id, operation: id }, from),
      )
      .find((line) => line !== undefined) ?? null
  const isOver = theCase.latest('death') !== undefined || standing.length === 0
  const state = stateOf({ now, from, until, answers, isOver, stillAsked: occasion.stillAsked })
  return [
    {
      key: `${occasion.id}.${first.dayOfOperation}`,
      occasion,
      questionnaire,
      ears: asked.map(({ side, id }) => ({ side, operation: id })),
      dayOfOperation: first.dayOfOperation,
      from,
      until,
      window: window.fact,
      state,
      answers,
    },
  ]
}

function stateOf(about: {
  readonly now: string
  readonly from: string
  readonly until: string
  readonly answers: AnswerLine | null
  readonly isOver: boolean
  readonly stillAsked: boolean
}): AskingState {
  const { now, from, until, answers, isOver, stillAsked } = about
  if (answers?.body.finished) return 'answered'
  if (isOver) return 'over'
  if (now < from) return 'later'
  if (now > until && !stillAsked) return 'passed'
  return answers ? 'begun' : 'now'
}

function windowFor(
  { when }: Occasion,
  operation: DoneOperation,
  setting: Setting,
): { readonly span: Span; readonly fact: Provenance } | null {
  if (when.kind === 'own') return { span: when.window.value, fact: when.window }
  const { steps } = procedureNamed(operation.procedure, setting.procedures).followUp
  const step = steps.find(({ id }) => id === when.step)
  return step ? windowOf(step, `owed.${step.id}`, setting) : null
}
