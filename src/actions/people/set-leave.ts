import { z } from 'zod'
import { clinicRow, closedDayRow } from '#core/journal/registers.ts'
import { closedRuns, type Leave, leaveSchema } from '#core/people/leave.ts'
import { addDays } from '#core/time/calendar-day.ts'
import { defineAction, type World } from '../action.ts'
import { callerIn } from '../caller.ts'
import { InputError } from '../input.ts'
import { Refused } from '../refused.ts'
import { staffOf } from './caller.ts'
import { newId } from './signing-in.ts'

/** Says that somebody is away and who does what they owe; a null deputy takes the leave of those days away. */
export const setLeave = defineAction({
  name: 'set-leave',
  summary: 'Says from when until when somebody is away and who stands in; a null deputy takes it back.',
  input: leaveSchema.extend({
    deputy: leaveSchema.shape.deputy.nullable(),
    /** Only on days the clinic is closed: weekends and holidays go to the deputy, the days between stay with the person. */
    onClosedDays: z.boolean().default(false),
  }),
  output: z.object({ id: z.string().nullable() }),
  may: ['surgeon', 'nurse', 'anaesthetist', 'desk', 'manager'],
  run: async ({ onClosedDays, ...leave }, world) => {
    const { caller, clinic } = callerIn(world)
    const { store, accounts, secrets, clock } = world
    if (leave.person !== caller.person && !caller.keeper) {
      throw new Refused(403, 'not-allowed', "Somebody else's leave is for a manager to write.", { path: 'person' })
    }
    if (leave.until < leave.from) {
      throw new InputError('wrong-value', 'until', 'until must not lie before from; write the last day away.')
    }
    const staff = await staffOf(store, clinic)
    const { deputy } = leave
    if (!staff.has(leave.person)) throw new InputError('wrong-value', 'person', `Nobody here is ${leave.person}.`)
    if (deputy !== null && (deputy === leave.person || !staff.has(deputy))) {
      throw new InputError('wrong-value', 'deputy', 'deputy must be somebody else of this clinic.')
    }
    if (deputy === null) {
      await accounts.setLeave(clinic, leave, null)
      return { id: null }
    }
    const spans = onClosedDays ? await closedSpans(leave, world) : [leave]
    let id: string | null = null
    for (const { from, until } of spans) {
      id = newId(secrets, 'leave')
      const kept = { person: leave.person, from, until, deputy, id, by: caller.person, at: clock.now() }
      await accounts.setLeave(clinic, kept, kept)
    }
    return { id }
  },
})

const longestSpan = 400

async function closedSpans(leave: Pick<Leave, 'person' | 'from' | 'until'>, world: World) {
  const { clinic } = callerIn(world)
  const { store, accounts } = world
  if (leave.until > addDays(leave.from, longestSpan)) {
    throw new InputError('wrong-value', 'until', `until must lie within ${longestSpan} days of from.`)
  }
  const row = (await store.current(clinic, 'clinic'))[0]
  const weekdays = row ? clinicRow.parse(row.body).closedWeekdays : []
  const days = (await store.current(clinic, 'closed-day')).map(({ body }) => closedDayRow.parse(body).day)
  const away = (await accounts.leaves(clinic)).filter(({ person }) => person === leave.person)
  const spans = closedRuns(leave, { weekdays, days }, away)
  if (spans.length > 0) return spans
  const message =
    'No day of this span is closed and still to be handed over; write the closed days of the clinic first.'
  throw new InputError('wrong-value', 'from', message)
}
