import { z } from 'zod'
import { defineAction } from '../action.ts'
import { callerIn } from '../caller.ts'
import { idSchema } from '../people/signing-in.ts'
import { Refused } from '../refused.ts'

/** Ends a link of a referring practice: the next time somebody opens it, it is closed. Any of the staff may. */
export const revokeVetLink = defineAction({
  name: 'revoke-vet-link',
  summary: 'Ends a link to the short form of a referring practice at once and for good.',
  input: z.strictObject({ link: idSchema }),
  output: z.object({ link: z.string() }),
  may: ['surgeon', 'nurse', 'anaesthetist', 'desk', 'manager'],
  run: async ({ link }, world) => {
    const { caller, clinic } = callerIn(world)
    if (await world.vetLinks.revoke(clinic, link, caller.person, world.clock.now())) return { link }
    throw new Refused(404, 'no-such-link', 'There is no such link here.', { path: 'link' })
  },
})
