import { z } from 'zod'
import { defineAction } from '../action.ts'
import { Refused } from '../refused.ts'
import { peopleOf, provedOf } from './caller.ts'
import { idSchema } from './signing-in.ts'

/** Ends the session of a device, a lost one for example. Who is no keeper ends their own part of it only. */
export const endSession = defineAction({
  name: 'end-session',
  summary: 'Signs everybody out at a device (manager), or only oneself (everybody else).',
  input: z.strictObject({ session: idSchema }),
  output: z.object({ people: z.array(z.string()) }),
  may: 'signed-in',
  run: async ({ session: id }, world) => {
    const { caller, clinic } = provedOf(world)
    const { accounts, clock } = world
    const now = clock.now()
    const session = (await accounts.openSessions(clinic, now)).find((one) => one.id === id)
    const people = session ? peopleOf(session) : []
    if (!session || (!caller.keeper && !people.includes(caller.person))) {
      throw new Refused(404, 'no-such-session', 'You are signed in at no such device.', { path: 'session' })
    }
    const others = caller.keeper ? [] : people.filter((person) => person !== caller.person)
    if (others.length > 0) await accounts.leave(id, caller.person, now)
    else await accounts.end(id, now)
    return { people: others }
  },
})
