import { z } from 'zod'
import { sides } from '#core/animal/species.ts'
import { vetAsks } from '#core/journal/kinds/vet-answer.ts'
import { vetLinkState, vetLinkStates, vetsOf } from '#core/people/vet-link-state.ts'
import { defineAction } from '../action.ts'
import { callerIn } from '../caller.ts'
import { caseStreamSchema, listedLink } from '../people/case-link.ts'
import { linkedCase } from '../people/linked-case.ts'

const answer = z.object({
  links: z.array(
    listedLink.extend({
      asked: z.enum(vetAsks),
      side: z.enum(sides).nullable(),
      dueFrom: z.string().nullable(),
      dueBy: z.string().nullable(),
      state: z.enum(vetLinkStates),
    }),
  ),
  /** For which practices a link can be made; none when the animal has died. */
  vets: z.array(z.object({ contact: z.string(), name: z.string() })),
})
export type VetLinksAnswer = z.infer<typeof answer>

/** Every link of a referring practice that was made for a case, whatever became of it. */
export const listVetLinks = defineAction({
  name: 'list-vet-links',
  summary: 'The links of a case for referring practices: what each asks, made and ended by whom; never the address.',
  input: z.strictObject({ stream: caseStreamSchema }),
  output: answer,
  may: 'signed-in',
  run: async ({ stream }, world) => {
    const { clinic } = callerIn(world)
    const { file, streams } = await linkedCase(world, clinic, stream)
    const now = world.clock.now()
    const links = await world.vetLinks.ofCases(clinic, streams)
    const vets = file && !file.theCase.latest('death') ? vetsOf(file) : []
    return {
      links: links.map(({ clinic: _, stream: __, ...link }) => ({ ...link, state: vetLinkState(link, file, now) })),
      vets: vets.map((contact) => ({ contact, name: file?.contacts.get(contact)?.name ?? contact })),
    }
  },
})
