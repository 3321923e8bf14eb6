import { z } from 'zod'
import { entryId, side, text } from '../answers.ts'
import { defineKind } from '../kind.ts'

/**
 * A named person looked at every source of the side and says which ear it is, and which sources are wrong. It overrules
 * those sources alone: whatever names another side later disagrees again.
 */
export const sideSettled = defineKind({
  name: 'side-settled',
  version: 1,
  subjects: ['operation'],
  body: z.strictObject({ side, overruled: z.array(entryId).min(1), because: text }),
  naturalKey: (_, subject) => (subject.kind === 'operation' ? subject.operation : undefined),
  example: {
    side: 'LEFT',
    overruled: ['0190a7c2-0000-7000-8000-000000000002'],
    because: 'The scan was read on a flipped series; the animal, the mark and the old report agree.',
  },
})
