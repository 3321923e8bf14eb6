import { z } from 'zod'
import { defineAction } from '../action.ts'

/** Copies everything the clinic has to the backup folder of the server, while everybody else goes on working. */
export const backupNow = defineAction({
  name: 'backup-now',
  summary: 'Copies everything the clinic has to the backup folder of the server.',
  input: z.strictObject({}),
  output: z.object({ folder: z.string(), at: z.string(), bytes: z.int(), entries: z.int() }),
  may: ['manager'],
  run: (_, world) => world.backUp(),
})
