import { z } from 'zod'
import { leaveSchema } from '#core/people/leave.ts'
import { defineAction } from '../action.ts'
import { callerIn } from '../caller.ts'
import { InputError } from '../input.ts'
import { Refused } from '../refused.ts'
import { staffOf } from './caller.ts'
import { newId } from './signing-in.ts'

/** Says that somebody is away and who does what they owe; a null deputy takes the leave of those days away. */
export const setLeave = defineAction({
  name: 'set-leave',
  summary: 'Says from when until when somebody is away and who stands in; a null deputy takes it back.',
  input: leaveSchema.extend({ deputy: leaveSchema.shape.deputy.nullable() }),
  output: z.object({ id: z.string().nullable() }),
  may: ['surgeon', 'nurse', 'anaesthetist', 'desk', 'manager'],
  run: async (leave, world) => {
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
    const id = newId(secrets, 'leave')
    const kept = deputy === null ? null : { ...leave, deputy, id, by: caller.person, at: clock.now() }
    await accounts.setLeave(clinic, leave, kept)
    return { id: kept?.id ?? null }
  },
})
