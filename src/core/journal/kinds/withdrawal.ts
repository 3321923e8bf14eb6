import { z } from 'zod'
import { defineKind } from '../kind.ts'

/** Takes a wrong entry back. The entry stays readable in the history; the header's `withdraws` names it, `reason` says why. */
export const withdrawal = defineKind({
  name: 'withdrawal',
  version: 1,
  subjects: ['animal', 'household', 'ear', 'operation', 'clinic'],
  body: z.strictObject({ because: z.enum(['wrong', 'twice', 'wrong-animal', 'other']) }),
  example: { because: 'wrong' },
})
