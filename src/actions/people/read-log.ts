import { z } from 'zod'
import { defineAction } from '../action.ts'
import { callerIn } from '../caller.ts'

/** Who opened a case, when, and on which device. */
export const readLog = defineAction({
  name: 'read-log',
  summary: 'Who opened a case, when, and on which device.',
  input: z.strictObject({ stream: z.string().min(1).max(200) }),
  output: z.object({
    lines: z.array(
      z.object({
        stream: z.string(),
        person: z.string(),
        device: z.string(),
        at: z.string(),
        /** The name of an owner or a practice that opened its page through a link; null for whoever works here. */
        owner: z.string().nullable(),
      }),
    ),
  }),
  may: ['surgeon', 'manager'],
  run: async ({ stream }, world) => {
    const { clinic } = callerIn(world)
    const lines = await world.accounts.readLog(clinic, stream.normalize('NFC'))
    const outside = [
      ...(await world.ownerLinks.ofCases(clinic, [stream])),
      ...(await world.vetLinks.ofCases(clinic, [stream])),
    ]
    const links = new Set(outside.map(({ id }) => id))
    const names = new Map((await world.store.current(clinic, 'contact')).map(({ id, body }) => [id, body?.name]))
    const ownerOf = ({ person, device }: (typeof lines)[number]) =>
      links.has(device) ? String(names.get(person) ?? person) : null
    return { lines: lines.map((line) => ({ ...line, owner: ownerOf(line) })) }
  },
})
