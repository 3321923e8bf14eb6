import { z } from 'zod'
import { ownerLinkRules } from '#content/follow-up/owner-link-rules.ts'
import { ownerLinkEnds, ownersOf } from '#core/people/owner-link-state.ts'
import { defineAction } from '../action.ts'
import { callerIn } from '../caller.ts'
import { hashOf } from '../people/caller.ts'
import { caseStreamSchema } from '../people/case-link.ts'
import { newLinkToken } from '../people/link-token.ts'
import { linkedCase } from '../people/linked-case.ts'
import { idSchema, newId } from '../people/signing-in.ts'
import { Refused } from '../refused.ts'
import { ownerLinkUses } from './owner-links.ts'

/** Makes the address of the owner's page. It is told once, here: what is kept cannot be turned back into it. */
export const makeOwnerLink = defineAction({
  name: 'make-owner-link',
  summary: 'Makes a private link to the owner’s page of one case for one contact; the address is told this once.',
  input: z.strictObject({ stream: caseStreamSchema, contact: idSchema, use: z.enum(ownerLinkUses) }),
  output: z.object({
    id: z.string(),
    /** On this server, to be put behind its address. */
    path: z.string(),
    /** The year at home counted in. */
    expiresAt: z.string(),
  }),
  may: ['surgeon', 'nurse', 'anaesthetist', 'desk', 'manager'],
  run: async ({ stream, contact, use }, world) => {
    const { caller, clinic } = callerIn(world)
    const { file } = await linkedCase(world, clinic, stream)
    if (!file?.theCase.latest('identity')) {
      throw new Refused(404, 'no-such-case', 'There is no animal on record here: write who it is first.')
    }
    if (file.theCase.latest('death')) {
      throw new Refused(409, 'animal-died', 'The animal has died: its owner is asked and shown nothing any more.')
    }
    if (!ownersOf(file).includes(contact)) {
      const message = 'A link is for an owner among the people of this animal: add that person to them first.'
      throw new Refused(409, 'not-an-owner-here', message, { path: 'contact' })
    }
    const token = newLinkToken(world.secrets)
    const madeAt = world.clock.now()
    const expiresAt = new Date(Date.parse(madeAt) + lasts[use]).toISOString()
    const id = newId(world.secrets, 'owner-link')
    const link = { id, clinic, stream, contact, use, madeAt, madeBy: caller.person, expiresAt }
    await world.ownerLinks.keep(link, hashOf(token))
    const afterHome = ownerLinkRules.privateLastsAfterHome.value
    return { id, path: `/o/${token}`, expiresAt: ownerLinkEnds({ ...link, revokedAt: null }, file, afterHome) }
  },
})

const lasts = {
  private: ownerLinkRules.privateLasts.value.count * 86_400_000,
  'in-room': ownerLinkRules.inRoomHours.value * 3_600_000,
} as const
