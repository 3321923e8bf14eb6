import { otherSide } from '#core/animal/species.ts'
import type { Provenance } from '#core/evidence/sourced.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import type { FollowUpStep } from '#core/procedures/follow-up.ts'
import { procedureNamed } from '#core/procedures/procedure.ts'
import { addDays, dayAfter, dayOf, instantAfter, type Span, startOfDay } from '#core/time/calendar-day.ts'
import { isOfEar, type OperationOnFile } from './operations.ts'
import { householdCalls, isTryOfOurs } from './our-tries.ts'
import type { Draft, Ending, OwedItem, Why } from './owed-item.ts'
import { type DueDates, type Setting, visitDays, wholeDays } from './setting.ts'

export type DoneOperation = OperationOnFile & { readonly dayOfOperation: string }

/** The call, the visits and the plans of the year after an operation. The status after a year has its own rule. */
export function owedFollowUp(operation: DoneOperation, setting: Setting): Draft[] {
  const { followUp } = procedureNamed(operation.procedure, setting.procedures)
  const steps = followUp.steps.filter(({ way }) => way !== 'status')
  return [
    ...steps.map((step) =>
      step.way === 'call' ? firstCall(step, operation, setting) : visit(step, operation, setting),
    ),
    ...followUp.plans.flatMap((plan) => planOwed(plan, operation, setting)),
    ...agreedVisit(operation, setting),
  ]
}

/** The window of a step: the clinic's own when it set one, with whose it is. */
export function windowOf(
  step: Pick<FollowUpStep, 'window'>,
  policy: string,
  setting: Setting,
): { readonly span: Span; readonly fact: Provenance; readonly why: readonly Why[] } {
  const own = setting.policies.set.get(policy)
  return own
    ? { span: own.span, fact: own.fact, why: [own.why] }
    : { span: step.window.value, fact: step.window, why: [] }
}

export function itemOf(
  operation: DoneOperation,
  setting: Setting,
  dates: DueDates,
  rest: Pick<OwedItem, 'id' | 'what' | 'about' | 'who' | 'way' | 'why' | 'facts'>,
): OwedItem {
  const { moved, ...due } = dates
  return {
    ...rest,
    ...due,
    person: null,
    side: operation.side,
    operation: operation.id,
    why: [...rest.why, ...moved],
    withOwner: true,
    revision: operation.written - 1 + setting.revision,
  }
}

export function checksAfter(operation: DoneOperation, setting: Setting): Line<BodyOf<'check'>>[] {
  return setting.file.theCase
    .live('check')
    .filter((line) => isOfEar(line, operation.side) && line.at > operation.moment.at)
}

export function endedBy(item: OwedItem, line: Pick<Line, 'at' | 'header'> | undefined): Draft {
  if (!line) return { item, ended: null }
  const because: Ending = line.at > item.dueBy ? 'settled-late' : 'settled'
  return { item, ended: { because, by: line.header.id } }
}

/** How a window is said: one day, days or weeks from the operation, or months after it. */
export function sayWindow({ from, until }: Span): Why {
  if (from.unit === 'days' && from.count === until.count) return { code: 'on-day', about: { day: String(from.count) } }
  const about = { from: String(from.count), until: String(until.count), unit: from.unit }
  return { code: from.unit === 'months' ? 'month-check' : 'days-after-operation', about }
}

/** Days counted from the operation: "day 10" of 4 March is 14 March. */
export function windowDays(span: Span, day: string): { from: string; until: string } {
  return { from: dayAfter(day, span.from), until: dayAfter(day, span.until) }
}

/** 24 to 72 hours after going home; after the operation while no discharge is on record. Calls are not moved. */
function firstCall(step: FollowUpStep, operation: DoneOperation, setting: Setting): Draft {
  const { theCase } = setting.file
  const home = theCase.live('discharge').find(({ at }) => at > operation.moment.at)
  const start = { at: home?.at ?? operation.moment.at, zone: setting.zone }
  const window = windowOf(step, 'owed.first-call', setting)
  const inHours = window.span.from.unit === 'hours'
  const dates: DueDates = inHours
    ? {
        dueFrom: instantAfter(start, window.span.from),
        dueBy: instantAfter(start, window.span.until),
        zone: setting.zone,
        precision: 'minute',
        moved: [],
      }
    : wholeDays(windowDays(window.span, dayOf(start)), setting.zone)
  const calls = householdCalls(setting.file).filter(
    ({ at, body }) => body.about === 'first-call' && at > operation.moment.at,
  )
  const tries = calls.filter(({ body }) => isTryOfOurs(body)).length
  // What the owner could not say back yet is asked again at the first call.
  const unclear = (home?.body.taught ?? []).filter(({ answer }) => answer === 'not-yet')
  const counted = sayWindow(window.span)
  const item = itemOf(operation, setting, dates, {
    id: `first-call:${operation.id}`,
    what: 'first-call',
    about: {},
    who: 'nurse',
    way: 'call',
    why: [
      home ? { ...counted, code: 'after-going-home' } : counted,
      ...window.why,
      ...(tries > 0 ? [{ code: 'tried-without-answer' as const, about: { tries: String(tries) } }] : []),
      ...unclear.map(({ item }) => ({ code: 'taught-not-yet' as const, about: { item } })),
    ],
    facts: [window.fact],
  })
  return endedBy(
    item,
    calls.find(({ body }) => body.reached === 'yes'),
  )
}

const whatOf = {
  'suture-check': 'suture-check',
  'wound-week-4': 'wound-check',
  'recheck-4-to-6-weeks': 'recheck',
  'recheck-3-months': 'recheck',
  'recheck-6-months': 'recheck',
} as const

function visit(step: FollowUpStep, operation: DoneOperation, setting: Setting): Draft {
  const window = windowOf(step, `owed.${step.id}`, setting)
  const days = windowDays(window.span, operation.dayOfOperation)
  const dates = visitDays(days, addDays(operation.dayOfOperation, 1), setting)
  const what = step.id === 'first-call' || step.id === 'twelve-months' ? 'recheck' : whatOf[step.id]
  const settling = settledVisit(step, operation, dates, setting)
  const item = itemOf(operation, setting, dates, {
    id: `${step.id}:${operation.id}`,
    what,
    about: { step: step.id },
    who: what === 'recheck' ? 'surgeon' : 'nurse',
    way: 'visit',
    why: [sayWindow(window.span), ...window.why, ...settling.why],
    facts: [window.fact],
  })
  return endedBy(item, settling.line)
}

/** Which entry is the visit: the coded form of the ear, whoever filled it in; for rechecks also the owner's form. */
function settledVisit(
  step: FollowUpStep,
  operation: DoneOperation,
  dates: DueDates,
  setting: Setting,
): { readonly line: Line<unknown> | undefined; readonly why: readonly Why[] } {
  const checks = checksAfter(operation, setting)
  const inTime = checks.filter(({ at }) => at >= dates.dueFrom)
  if (step.id === 'suture-check') {
    const line = checks.find(({ at, body }) => {
      if (body.sutures === 'out') return true
      return at >= dates.dueFrom && body.sutures === 'none' && body.wound !== 'not-assessed'
    })
    const stillIn = inTime.some(({ body }) => body.sutures === 'in')
    return { line, why: stillIn ? [{ code: 'sutures-still-in', about: {} }] : [] }
  }
  if (step.id === 'wound-week-4') return { line: inTime.find(({ body }) => body.wound !== 'not-assessed'), why: [] }
  const form = setting.file.theCase
    .live('owner-answer')
    .find(({ at, body }) => body.questionnaire === step.id && at >= dates.dueFrom)
  return { line: inTime[0] ?? form, why: [] }
}

/** A visit agreed at discharge on a day that no other visit has in its window. */
function agreedVisit(operation: DoneOperation, setting: Setting): Draft[] {
  const { steps } = procedureNamed(operation.procedure, setting.procedures).followUp
  const home = setting.file.theCase
    .live('discharge')
    .filter(({ at }) => at > operation.moment.at)
    .at(-1)
  const day = home?.body.nextVisit
  if (day === null || day === undefined || day <= operation.dayOfOperation) return []
  const held = steps.some((step) => {
    if (step.way !== 'visit') return false
    const { from, until } = windowDays(windowOf(step, `owed.${step.id}`, setting).span, operation.dayOfOperation)
    return from <= day && day <= until
  })
  if (held) return []
  const item = itemOf(operation, setting, wholeDays({ from: day, until: day }, setting.zone), {
    id: `agreed-visit:${operation.id}`,
    what: 'agreed-visit',
    about: {},
    who: 'nurse',
    way: 'visit',
    why: [{ code: 'agreed-with-owner', about: { day } }],
    facts: [],
  })
  return [
    endedBy(
      item,
      checksAfter(operation, setting).find(({ at }) => at >= startOfDay(day, setting.zone)),
    ),
  ]
}

/** Skin and other ear: settled at the recheck of weeks 4 to 6, by an entry that says what was decided. */
function planOwed(plan: 'skin' | 'other-ear', operation: DoneOperation, setting: Setting): Draft[] {
  const { theCase } = setting.file
  const { steps } = procedureNamed(operation.procedure, setting.procedures).followUp
  const step = steps.find(({ id }) => id === 'recheck-4-to-6-weeks')
  if (!step) return []
  const window = windowOf(step, `owed.${step.id}`, setting)
  const dates = wholeDays(windowDays(window.span, operation.dayOfOperation), setting.zone)
  const after = ({ at }: { readonly at: string }) => at > operation.moment.at
  const item = itemOf(operation, setting, dates, {
    id: `${plan}-plan:${operation.id}`,
    what: plan === 'skin' ? 'skin-plan' : 'other-ear-plan',
    about: {},
    who: 'surgeon',
    way: 'task',
    why: [{ code: 'plan-at-recheck', about: {} }, ...window.why],
    facts: [window.fact],
  })
  if (plan === 'skin') {
    const told = theCase.live('history-item').filter(({ body }) => body.topic === 'skin')
    return [endedBy(item, first([...theCase.live('skin-plan'), ...told].filter(after)))]
  }
  const other = otherSide(operation.side)
  const operated = setting.operations.find(({ side, booking }) => side === other && booking)
  if (operated?.booking) return [{ item, ended: { because: 'not-needed', by: operated.booking.header.id } }]
  const plans = [...theCase.live('other-ear-plan'), ...theCase.live('choice')]
  return [endedBy(item, first(plans.filter((line) => after(line) && isOfEar(line, other))))]
}

/** The earliest of entries of several kinds. */
function first<Of extends Pick<Line, 'at' | 'header'>>(lines: readonly Of[]): Of | undefined {
  return [...lines].sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : a.header.id < b.header.id ? -1 : 1))[0]
}
