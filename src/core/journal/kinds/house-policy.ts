import { z } from 'zod'
import { shortText, text } from '../answers.ts'
import { defineKind } from '../kind.ts'

/** A default that this clinic changed; the author and date are the entry's own. */
export const housePolicy = defineKind({
  name: 'house-policy',
  version: 1,
  subjects: ['clinic'],
  body: z.strictObject({ policy: shortText, value: shortText, because: text }),
  naturalKey: (body) => body.policy,
  example: { policy: 'lasting-deficit-days', value: '180', because: 'The default, confirmed at our first meeting.' },
})
