import { z } from 'zod'
import { defineAction } from '../action.ts'
import { whoIsAt, whoSchema } from './signing-in.ts'

export const whoAmI = defineAction({
  name: 'who-am-i',
  summary: 'Who is signed in at this device, in which clinic, and the time of the server.',
  input: z.strictObject({}),
  output: whoSchema,
  may: 'signed-in',
  ofDevice: true,
  run: (_, world) => whoIsAt(world, world.door.token),
})
