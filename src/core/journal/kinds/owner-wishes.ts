import { z } from 'zod'
import { shortText, text } from '../answers.ts'
import { defineKind } from '../kind.ts'
import { optionIds } from './choice.ts'

/** What matters for the animal itself, and what matters for the household: asked apart. */
export const animalMatters = ['no-pain', 'short-recovery', 'no-operation', 'hearing', 'face'] as const
export const householdMatters = ['care-at-home', 'visits', 'cost', 'once'] as const
export const matterWeights = ['very', 'some', 'little'] as const
export const leanings = ['not-decided', ...optionIds] as const

/** What the owner says matters, which way they lean, and what they want to ask; may be said again, and each stays. */
export const ownerWishes = defineKind({
  name: 'owner-wishes',
  version: 1,
  subjects: ['animal'],
  body: z.strictObject({
    /** The edition of the page it was asked on. */
    edition: shortText,
    language: z.string().regex(/^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$/, 'must be a language tag like en or pt-BR'),
    /** Null: not asked or not answered; `not-decided` is an answer. */
    leaning: z.enum(leanings).nullable(),
    /** What was not marked stands nowhere. */
    matters: z
      .array(z.strictObject({ matter: z.enum([...animalMatters, ...householdMatters]), weight: z.enum(matterWeights) }))
      .max(20),
    questions: text.nullable(),
  }),
  example: {
    edition: 'owner-page 1',
    language: 'en',
    leaning: 'not-decided',
    matters: [
      { matter: 'no-pain', weight: 'very' },
      { matter: 'cost', weight: 'some' },
    ],
    questions: 'Who looks after the eye at night?',
  },
})
