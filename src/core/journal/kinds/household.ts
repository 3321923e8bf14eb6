import { z } from 'zod'
import { id, shortText } from '../answers.ts'
import { defineKind } from '../kind.ts'

/** The people around the animal: who decides, who pays, who nurses, in which language we speak with them. */
export const household = defineKind({
  name: 'household',
  version: 1,
  subjects: ['household'],
  body: z.strictObject({
    contacts: z
      .array(
        z.strictObject({
          contact: id,
          roles: z.array(z.enum(['owner', 'nurses-at-home', 'pays', 'in-emergency'])).min(1),
          mayConsent: z.boolean(),
        }),
      )
      .min(1),
    language: z.string().regex(/^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$/, 'must be a language tag like en or pt-BR'),
    otherAnimals: shortText.nullable(),
  }),
  naturalKey: (_, subject) => (subject.kind === 'household' ? subject.household : undefined),
  example: {
    contacts: [{ contact: 'contact-1', roles: ['owner', 'nurses-at-home', 'pays'], mayConsent: true }],
    language: 'en',
    otherAnimals: null,
  },
})
