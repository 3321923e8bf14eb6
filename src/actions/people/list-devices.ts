import { z } from 'zod'
import { defineAction } from '../action.ts'
import { callerIn } from '../caller.ts'
import { peopleOf } from './caller.ts'

/** Where people are signed in: a keeper of the house sees every device, everybody else their own. */
export const listDevices = defineAction({
  name: 'list-devices',
  summary: 'The devices where people are signed in: all of them for a manager, their own for everybody else.',
  input: z.strictObject({}),
  output: z.object({
    devices: z.array(
      z.object({
        session: z.string(),
        device: z.string(),
        name: z.string(),
        since: z.string(),
        expiresAt: z.string(),
        people: z.array(z.string()),
        here: z.boolean(),
      }),
    ),
  }),
  may: 'signed-in',
  run: async (_, world) => {
    const { caller, clinic } = callerIn(world)
    const now = world.clock.now()
    const open = await world.accounts.openSessions(clinic, now)
    const seen = open.filter((session) => caller.keeper || peopleOf(session).includes(caller.person))
    const devices = seen.map((session) => ({
      session: session.id,
      device: session.device,
      name: session.deviceName,
      since: session.madeAt,
      expiresAt: session.expiresAt,
      people: peopleOf(session),
      here: session.id === caller.session,
    }))
    return { devices }
  },
})
