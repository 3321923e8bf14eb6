import { z } from 'zod'
import { shortText } from '../answers.ts'
import { defineKind, keyOf } from '../kind.ts'

/** Swabs, needles and instruments counted, and where the throat pack is. */
export const count = defineKind({
  name: 'count',
  version: 1,
  subjects: ['operation'],
  body: z.strictObject({
    when: z.enum(['before', 'before-closing', 'final']),
    items: z.array(z.strictObject({ what: shortText, expected: z.int().min(0), found: z.int().min(0) })).min(1),
    throatPack: z.enum(['none-used', 'in', 'out']),
  }),
  naturalKey: (body, subject) => (subject.kind === 'operation' ? keyOf(subject.operation, body.when) : body.when),
  example: { when: 'final', items: [{ what: 'swabs', expected: 20, found: 20 }], throatPack: 'out' },
})
