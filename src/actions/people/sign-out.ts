import { z } from 'zod'
import { defineAction } from '../action.ts'
import { callerIn } from '../caller.ts'

/** Signs out the person who acts, or everybody at this device. */
export const signOut = defineAction({
  name: 'sign-out',
  summary: 'Signs out the person who acts now, or everybody at this device.',
  input: z.strictObject({ everyone: z.boolean() }),
  output: z.object({ people: z.array(z.string()) }),
  may: 'signed-in',
  run: async ({ everyone }, world) => {
    const { caller } = callerIn(world)
    const { accounts, clock, door } = world
    const people = everyone ? [] : caller.people.filter((person) => person !== caller.person)
    if (people.length > 0) await accounts.leave(caller.session, caller.person, clock.now())
    else {
      await accounts.end(caller.session, clock.now())
      door.takeBack()
    }
    return { people }
  },
})
