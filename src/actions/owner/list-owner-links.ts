import { z } from 'zod'
import { ownerLinkRules } from '#content/follow-up/owner-link-rules.ts'
import { ownerLinkEnds, ownerLinkState, ownerLinkStates, ownersOf } from '#core/people/owner-link-state.ts'
import { defineAction } from '../action.ts'
import { callerIn } from '../caller.ts'
import { caseStreamSchema, listedLink } from '../people/case-link.ts'
import { linkedCase } from '../people/linked-case.ts'
import { ownerLinkUses } from './owner-links.ts'

const answer = z.object({
  links: z.array(listedLink.extend({ use: z.enum(ownerLinkUses), state: z.enum(ownerLinkStates) })),
  /** For whom a link can be made; empty when the animal has died. */
  owners: z.array(z.object({ contact: z.string(), name: z.string() })),
})
export type OwnerLinksAnswer = z.infer<typeof answer>

const afterHome = ownerLinkRules.privateLastsAfterHome.value

/** Every private link that was made for a case, whatever became of it, and for whom one can be made. */
export const listOwnerLinks = defineAction({
  name: 'list-owner-links',
  summary: 'The private links of a case: for whom, made and ended by whom, opened when; never the address itself.',
  input: z.strictObject({ stream: caseStreamSchema }),
  output: answer,
  may: 'signed-in',
  run: async ({ stream }, world) => {
    const { clinic } = callerIn(world)
    const { file, streams } = await linkedCase(world, clinic, stream)
    const now = world.clock.now()
    const links = await world.ownerLinks.ofCases(clinic, streams)
    const owners = file && !file.theCase.latest('death') ? ownersOf(file) : []
    return {
      links: links.map(({ clinic: _, stream: __, ...link }) => ({
        ...link,
        expiresAt: ownerLinkEnds(link, file, afterHome),
        state: ownerLinkState(link, file, now, afterHome),
      })),
      owners: owners.map((contact) => ({ contact, name: file?.contacts.get(contact)?.name ?? contact })),
    }
  },
})
