import { z } from 'zod'
import { defineAction } from '../action.ts'
import { callerIn } from '../caller.ts'

/** Who opened a case, when, and on which device. */
export const readLog = defineAction({
  name: 'read-log',
  summary: 'Who opened a case, when, and on which device.',
  input: z.strictObject({ stream: z.string().min(1).max(200) }),
  output: z.object({
    lines: z.array(z.object({ stream: z.string(), person: z.string(), device: z.string(), at: z.string() })),
  }),
  may: ['surgeon', 'manager'],
  run: async ({ stream }, world) => {
    const { clinic } = callerIn(world)
    return { lines: await world.accounts.readLog(clinic, stream.normalize('NFC')) }
  },
})
