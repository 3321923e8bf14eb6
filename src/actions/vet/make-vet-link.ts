import { z } from 'zod'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { vetLinkRules, vetStretches } from '#content/follow-up/vet-link-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { operationsOf } from '#core/owed/operations.ts'
import { owedOf } from '#core/owed/owed.ts'
import { vetsOf } from '#core/people/vet-link-state.ts'
import { instantAfter } from '#core/time/calendar-day.ts'
import { askOfVet, operatedEars } from '#core/vet/asked-of-vet.ts'
import { defineAction } from '../action.ts'
import { callerIn } from '../caller.ts'
import { hashOf } from '../people/caller.ts'
import { caseStreamSchema } from '../people/case-link.ts'
import { newLinkToken } from '../people/link-token.ts'
import { linkedCase } from '../people/linked-case.ts'
import { idSchema, newId } from '../people/signing-in.ts'
import { Refused } from '../refused.ts'
import type { VetLink } from './vet-links.ts'

const ask = z.discriminatedUnion('kind', [
  /** One owed look, by its id among what is owed. */
  z.strictObject({ kind: z.literal('look'), owed: z.string().min(1).max(300) }),
  z.strictObject({ kind: z.literal('stretch'), stretch: z.enum(vetStretches) }),
])

/** Makes the address of the short form for a referring practice. It is told once: what is kept cannot be turned back. */
export const makeVetLink = defineAction({
  name: 'make-vet-link',
  summary: 'Makes a link to the short form of one case for its referring practice; the address is told this once.',
  input: z.strictObject({ stream: caseStreamSchema, contact: idSchema, ask }),
  output: z.object({
    id: z.string(),
    /** On this server, to be put behind its address. */
    path: z.string(),
    expiresAt: z.string(),
  }),
  may: ['surgeon', 'nurse', 'anaesthetist', 'desk', 'manager'],
  run: async ({ stream, contact, ask }, world) => {
    const { caller, clinic } = callerIn(world)
    const { file } = await linkedCase(world, clinic, stream)
    if (!file?.theCase.latest('identity')) {
      throw new Refused(404, 'no-such-case', 'There is no animal on record here: write who it is first.')
    }
    if (file.theCase.latest('death')) {
      throw new Refused(409, 'animal-died', 'The animal has died: nobody is asked about it any more.')
    }
    if (!vetsOf(file).includes(contact)) {
      const message = 'A link is for a practice that looks after this animal: name it on the animal’s page first.'
      throw new Refused(409, 'not-a-vet-here', message, { path: 'contact' })
    }
    if (operatedEars(operationsOf(file), null).length === 0) {
      throw new Refused(409, 'nothing-operated', 'No ear is on record as operated: there is nothing to look at yet.')
    }
    const madeAt = world.clock.now()
    const asked = askedFor(ask, file, madeAt)
    const token = newLinkToken(world.secrets)
    const id = newId(world.secrets, 'vet-link')
    await world.vetLinks.keep({ id, clinic, stream, contact, ...asked, madeAt, madeBy: caller.person }, hashOf(token))
    return { id, path: `/v/${token}`, expiresAt: asked.expiresAt }
  },
})

type Asked = Pick<VetLink, 'asked' | 'side' | 'dueFrom' | 'dueBy' | 'expiresAt'>

function askedFor(ask: z.infer<typeof makeVetLink.input>['ask'], file: CaseFile, now: string): Asked {
  const { zone } = file.clinic
  if (ask.kind === 'stretch') {
    const expiresAt = instantAfter({ at: now, zone }, vetLinkRules.stretches.value[ask.stretch])
    return { asked: 'stretch', side: null, dueFrom: null, dueBy: null, expiresAt }
  }
  const item = owedOf(file, procedures, { rules: owedRules }).owed.find(({ id }) => id === ask.owed)
  const asked = item ? askOfVet(item) : null
  if (!item || asked === null) {
    const message = 'This look is not owed, or nobody elsewhere can make it: choose one of those on the page.'
    throw new Refused(409, 'not-to-be-asked', message, { path: 'ask.owed' })
  }
  const { side, dueFrom, dueBy } = item
  const from = dueBy > now ? dueBy : now
  const expiresAt = instantAfter({ at: from, zone }, vetLinkRules.afterDue.value)
  return { asked, side, dueFrom, dueBy, expiresAt }
}
