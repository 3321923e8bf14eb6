import { procedureNamed } from '#core/procedures/procedure.ts'
import { type AnswerLine, answersFor } from '#core/questionnaire/answer-line.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { type DoneOperation, itemOf, sayWindow, windowDays, windowOf } from './follow-up.ts'
import { isOfEar } from './operations.ts'
import { householdCalls, isTryOfOurs, wasTold } from './our-tries.ts'
import type { Draft, Ending, OwedItem, Why } from './owed-item.ts'
import { dueWithin } from './results.ts'
import { type Setting, wholeDays } from './setting.ts'

/**
 * The status of the ear after a year. Three polite tries over two channels, then "unknown" may be written down, never
 * "fine"; an "unknown" written sooner does not settle it, and nothing that was written with nobody reached does. A late event after the status asks for the outcome again.
 */
export function owedAtTwelveMonths(operation: DoneOperation, setting: Setting): Draft[] {
  const step = procedureNamed(operation.procedure, setting.procedures).followUp.steps.find(
    ({ way }) => way === 'status',
  )
  if (!step) return []
  const window = windowOf(step, 'owed.twelve-months', setting)
  const days = windowDays(window.span, operation.dayOfOperation)
  const dates = wholeDays(days, setting.zone)
  const { theCase } = setting.file
  const statuses = theCase
    .live('twelve-months')
    .filter((line) => isOfEar(line, operation.side) && line.at >= dates.dueFrom)
  const tries = triesSince(dates.dueFrom, setting)
  const answered = answersOf(operation, dates.dueFrom, setting)
  // Who answered was reached: then it is for a person to say that the answers leave it unknown.
  const enough = answered === undefined && isEnough(tries, setting)
  const isAnswer = ({ body }: (typeof statuses)[number]) => body.status !== 'unknown' && wasTold(body)
  const isUnknown = ({ body }: (typeof statuses)[number]) => body.status === 'unknown'
  const isUnknownEnough = enough || answered !== undefined
  const status = statuses.findLast((line) => isAnswer(line) || (isUnknownEnough && isUnknown(line)))
  const open = status === undefined ? statuses : []
  const tooEarly = open.some(isUnknown)
  const fromNobody = open.some((line) => !isUnknown(line))
  const why: Why[] = [
    sayWindow(window.span),
    ...window.why,
    ...(answered
      ? [{ code: 'owner-answered' as const, about: { day: dayOf({ at: answered.at, zone: setting.zone }) } }]
      : []),
    ...(tries.length > 0 ? [{ code: 'tried-without-answer' as const, about: { tries: String(tries.length) } }] : []),
    ...(fromNobody ? [{ code: 'status-from-nobody' as const, about: {} }] : []),
    ...(tooEarly ? [{ code: 'unknown-too-early' as const, about: politeness(setting) }] : []),
    ...(enough ? [{ code: 'three-tries-done' as const, about: politeness(setting) }] : []),
  ]
  const item = itemOf(operation, setting, dates, {
    id: `twelve-months:${operation.id}`,
    what: enough && !status ? 'unknown-may-be-recorded' : 'twelve-months',
    about: {},
    who: 'nurse',
    way: 'call',
    why,
    facts: [window.fact, setting.rules.politeTries],
  })
  if (!status) return [{ item, ended: null }]
  const because: Ending = status.at > item.dueBy ? 'settled-late' : 'settled'
  const settled: Draft = { item, ended: { because, by: status.header.id } }
  return [settled, ...outcomeAgain(operation, status.at, setting)]
}

/** What the owner sent in answer to the questions after a year; not what was only begun. */
function answersOf(operation: DoneOperation, from: string, setting: Setting): AnswerLine | undefined {
  const occasion = setting.rules.questions.occasions.find(
    ({ when }) => when.kind === 'step' && when.step === 'twelve-months',
  )
  if (!occasion) return undefined
  const asked = { occasion: occasion.id, questionnaire: occasion.questionnaire, operation: operation.id }
  const line = answersFor(setting.file.theCase, asked, from)
  return line?.body.finished ? line : undefined
}

type Try = { readonly channel: string }

/** Our tries to ask after twelve months that reached nobody. */
function triesSince(from: string, setting: Setting): Try[] {
  return householdCalls(setting.file)
    .filter(({ at, body }) => body.about === 'twelve-months' && isTryOfOurs(body) && at >= from)
    .map(({ body }) => ({ channel: body.channel }))
}

function isEnough(tries: readonly Try[], setting: Setting): boolean {
  const { tries: wanted, channels } = setting.rules.politeTries.value
  return tries.length >= wanted && new Set(tries.map(({ channel }) => channel)).size >= channels
}

function politeness(setting: Setting): Readonly<Record<string, string>> {
  const { tries, channels } = setting.rules.politeTries.value
  return { tries: String(tries), channels: String(channels) }
}

/** An event after the status makes the status old: the outcome of the index ear is asked again. */
function outcomeAgain(operation: DoneOperation, statusAt: string, setting: Setting): Draft[] {
  const event = setting.file.theCase
    .live('late-event')
    .filter((line) => line.body.operation === operation.id && line.at > statusAt)
    .at(-1)
  if (!event) return []
  const within = setting.rules.lateEventWithin
  const item: OwedItem = {
    ...itemOf(
      operation,
      setting,
      wholeDays({ from: operation.dayOfOperation, until: operation.dayOfOperation }, setting.zone),
      {
        id: `outcome-again:${operation.id}`,
        what: 'outcome-again',
        about: { event: event.body.what },
        who: 'surgeon',
        way: 'task',
        why: [{ code: 'late-event-after-status', about: { what: event.body.what } }],
        facts: [within],
      },
    ),
    ...dueWithin(event.at, within, setting.zone),
  }
  return [{ item, ended: null }]
}
