import { z } from 'zod'
import { signOutCodes } from '#core/theatre/sign-out-codes.ts'
import { entryId, shortText, text } from '../answers.ts'
import { defineKind } from '../kind.ts'

/**
 * A near miss or an incident, written in under a minute by anybody: what happened and what would help. Nobody is asked
 * whose fault it was.
 */
export const incidentNote = defineKind({
  name: 'incident-note',
  version: 1,
  subjects: ['operation', 'animal'],
  body: z.strictObject({
    what: z.enum([
      'side',
      'identity',
      'drug-or-dose',
      'count-or-pack',
      'specimen',
      'airway-or-anaesthesia',
      'bleeding',
      'equipment',
      'burn-or-pressure',
      'handover',
      'other',
    ]),
    /** Where in the course; null where nobody said so. */
    during: z
      .enum(['before-anaesthesia', 'induction', 'operation', 'closing', 'recovery', 'ward', 'going-home'])
      .nullable(),
    reached: z.enum(['no', 'yes-no-harm', 'yes-harm', 'unknown']).nullable(),
    helped: z.array(z.enum(['spoken-pause', 'somebody-spoke', 'second-check', 'count', 'monitor', 'drill', 'luck'])),
    change: z.array(z.enum(['equipment', 'labels', 'list-or-pause', 'teaching', 'hands', 'handover', 'nothing'])),
    text: text.nullable(),
    /** The beginning of the emergency it belongs to; what happened there is read from the entries. */
    emergency: entryId.nullable(),
    /** The point of the sign-out that this note explains, and of what: the label of a pot, the count. */
    point: z.enum(signOutCodes).nullable(),
    pointOf: shortText.nullable(),
  }),
  example: {
    what: 'count-or-pack',
    during: 'closing',
    reached: 'no',
    helped: ['count'],
    change: ['list-or-pause'],
    text: 'One swab lay under the drape.',
    emergency: null,
    point: null,
    pointOf: null,
  },
})
