import { isOpen, type ToldSign, toldSignsOf } from '#core/late/told-signs.ts'
import { dayAfter, dayOf } from '#core/time/calendar-day.ts'
import { sayMoment } from '#core/time/moment.ts'
import { timesWritten } from './operations.ts'
import type { Draft, OwedItem, OwedRole, Why } from './owed-item.ts'
import { dueWithin } from './results.ts'
import { laterOf, type Setting } from './setting.ts'

/**
 * A late sign that was told in a file waits until somebody says to which operated ear it belongs, or that it belongs to
 * none. "Not sure" is owed by the surgeon, "nobody could look" by the front desk. Where nobody said anything it is owed
 * in the file of the operated animal itself; in a new file only a look over all files can tell whether anything is owed,
 * and the page of that file takes it.
 */
export function owedAfterLateSigns(setting: Setting): Draft[] {
  return toldSignsOf(setting.file.theCase, setting.rules.lateSigns).flatMap((sign) => {
    if (sign.answer === null)
      return isOfOperatedEar(sign, setting) ? [{ item: itemOf(sign, setting), ended: null }] : []
    const item = itemOf(sign, setting)
    return [{ item, ended: isOpen(sign) ? null : { because: 'settled', by: sign.answer.header.id } }]
  })
}

/** Told long enough after an operation in this file, while no late event of the file stands: what follows one is its course. */
function isOfOperatedEar({ line }: ToldSign, { file, operations, rules, zone }: Setting): boolean {
  if (file.theCase.live('late-event').length > 0) return false
  const told = dayOf({ at: line.at, zone })
  const { value: lateFrom } = rules.lateSigns.lateFrom
  return operations.some(({ done, moment }) => done && dayAfter(dayOf({ at: moment.at, zone }), lateFrom) <= told)
}

function itemOf({ told, line, signs, answer }: ToldSign, setting: Setting): OwedItem {
  const { theCase } = setting.file
  const within = setting.rules.lateEventWithin
  const sign = answer?.body.signs[0] ?? signs[0] ?? ''
  const when = sayMoment({ ...line.header.happenedAt, at: line.at })
  const belongs = answer?.body.belongs
  const why: Why[] = [
    { code: 'late-sign-told', about: { sign, when } },
    ...(belongs === 'unsure' ? [{ code: 'late-sign-unsure' as const, about: {} }] : []),
    ...(belongs === 'not-looked' ? [{ code: 'late-sign-not-looked' as const, about: {} }] : []),
  ]
  const who: OwedRole = belongs === 'not-looked' ? 'desk' : 'surgeon'
  const from = answer ?? line
  return {
    ...dueWithin(laterOf(from.header.writtenAt, from.at), within, setting.zone),
    id: `late-sign-to-settle:${told}`,
    what: 'late-sign-to-settle',
    about: { sign },
    who,
    person: null,
    way: 'task',
    side: null,
    operation: null,
    why,
    facts: [within, setting.rules.lateSigns.lateFrom],
    // What came back after an operation counts among our results, also of an animal that has died since.
    withOwner: false,
    revision: setting.revision + timesWritten(theCase, 'late-sign', () => true),
  }
}
