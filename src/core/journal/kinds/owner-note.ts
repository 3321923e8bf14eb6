import { z } from 'zod'
import { sides } from '#core/animal/species.ts'
import { day, moment, text, timeOfDay } from '../answers.ts'
import { defineKind } from '../kind.ts'

/** What an owner wrote from home through the private link, in their words; pictures are attached to the entry. */
export const ownerNote = defineKind({
  name: 'owner-note',
  version: 1,
  subjects: ['animal'],
  body: z.strictObject({
    /** Of the page it was written on. */
    language: z.string().regex(/^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$/, 'must be a language tag like en or pt-BR'),
    /** Null: only pictures were sent. */
    text: text.nullable(),
    /** When the owner saw it, by the owner's account; null where nothing was said. */
    seen: z.strictObject({ day, time: timeOfDay.nullable() }).nullable(),
    /** Null: not said, or not about an ear. */
    ear: z.enum([...sides, 'not-sure']).nullable(),
    /** By the clock of the owner's phone, when it waited there for a network; null when it came straight. */
    keptSince: moment.nullable(),
  }),
  example: {
    language: 'en',
    text: 'The stitches look dry. This morning there was a little blood on the collar.',
    seen: { day: '2026-03-03', time: '07:30' },
    ear: 'LEFT',
    keptSince: null,
  },
})
