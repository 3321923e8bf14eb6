import { z } from 'zod'
import { defineKind } from '../kind.ts'

/** Words that belong nowhere else. */
export const note = defineKind({
  name: 'note',
  version: 1,
  subjects: ['animal', 'household', 'ear', 'operation', 'clinic'],
  body: z.strictObject({ text: z.string().min(1).max(10_000) }),
  example: { text: 'Owner will bring all ear drops to the appointment.' },
})
