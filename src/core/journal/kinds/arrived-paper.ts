import { z } from 'zod'
import { shortText } from '../answers.ts'
import { defineKind } from '../kind.ts'

export const waysOfArrival = ['post', 'email', 'phone', 'brought-along', 'other'] as const
export const paperKinds = [
  'referral-letter',
  'laboratory-report',
  'pathology-report',
  'imaging-report',
  'medicine-list',
  'insurance',
  'signed-form',
  'other',
] as const

/**
 * A picture or paper that came in and waits in the holding tray: nothing here says with certainty whose it is. Filing
 * it is a `refile` to the case; the files are named in the header's attachments.
 */
export const arrivedPaper = defineKind({
  name: 'arrived-paper',
  version: 1,
  subjects: ['clinic'],
  body: z.strictObject({
    came: z.enum(waysOfArrival),
    /** As they gave themselves: a name, a practice, a number. Null when it does not say. */
    from: shortText.nullable(),
    seems: z.enum([...paperKinds, 'photograph', 'not-said']),
    /** Words on it that may tell whose it is. */
    says: shortText.nullable(),
  }),
  example: {
    came: 'post',
    from: 'Northfold Laboratory',
    seems: 'laboratory-report',
    says: 'Bramble, owner Okafor, left ear swab',
  },
})
