import { z } from 'zod'
import { id, shortText } from '../answers.ts'
import { defineKind } from '../kind.ts'

/** Consent taken back for one ear, as it can be until the cut. The other ear stands; to agree again is a new agreement. */
export const consentWithdrawn = defineKind({
  name: 'consent-withdrawn',
  version: 1,
  subjects: ['ear'],
  body: z.strictObject({
    by: id,
    how: z.enum(['in-person', 'by-phone', 'in-writing']),
    /** Nobody has to give a reason. */
    why: shortText.nullable(),
    takenBy: id,
  }),
  example: {
    by: 'contact-1',
    how: 'by-phone',
    why: 'Wants to wait until the skin is calm.',
    takenBy: 'person-desk',
  },
})
