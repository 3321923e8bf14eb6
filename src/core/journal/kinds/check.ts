import { z } from 'zod'
import { blink, text, yesNo } from '../answers.ts'
import type { Json } from '../canonical.ts'
import { defineKind } from '../kind.ts'
import { storedQuantity } from '../stored.ts'

/**
 * Wound, face, eye and balance of an operated ear at one look, whoever looked. The same form each time: what the baseline
 * holds of a nerve is asked again. Pupil and third eyelid are graded together, as Horner’s.
 */
export const check = defineKind({
  name: 'check',
  version: 2,
  subjects: ['ear'],
  body: z.strictObject({
    seenBy: z.enum(['us', 'referring-vet', 'owner-photograph', 'owner-words']),
    wound: z.enum(['closed', 'gap', 'seroma', 'infected', 'pinna-edge', 'not-assessed']),
    /** What treatment the wound needed; published grades are computed from it. */
    woundNeeded: z.enum(['nothing', 'dressing', 'drug', 'drainage-awake', 'operation', 'not-assessed']),
    sutures: z.enum(['in', 'out', 'none', 'not-assessed']),
    blink,
    lipOrEarDroop: yesNo,
    nostril: z.enum(['moist', 'dry', 'not-assessed']),
    /** Set when the look fell within the local anaesthetic's duration: not graded as a palsy. */
    possibleBlockEffect: z.boolean(),
    horner: yesNo,
    headTilt: yesNo,
    nystagmus: yesNo,
    unsteady: yesNo,
    gag: z.enum(['present', 'weak', 'absent', 'not-assessed']),
    hears: yesNo,
    tearTest: storedQuantity('mm/min').nullable(),
    fluorescein: z.enum(['negative', 'positive', 'not-assessed']),
    painful: yesNo,
    text: text.nullable(),
  }),
  /** Version 1 asked of balance the head tilt alone, and not for nostril, throat and hearing: nobody looked. */
  upcasts: {
    1: (older) => ({
      ...(older as Record<string, Json>),
      nostril: 'not-assessed',
      nystagmus: 'not-assessed',
      unsteady: 'not-assessed',
      gag: 'not-assessed',
      hears: 'not-assessed',
    }),
  },
  example: {
    seenBy: 'us',
    wound: 'closed',
    woundNeeded: 'nothing',
    sutures: 'out',
    blink: 'weak',
    lipOrEarDroop: 'yes',
    nostril: 'moist',
    possibleBlockEffect: false,
    horner: 'no',
    headTilt: 'no',
    nystagmus: 'no',
    unsteady: 'no',
    gag: 'not-assessed',
    hears: 'not-assessed',
    tearTest: { value: '14', unit: 'mm/min' },
    fluorescein: 'negative',
    painful: 'no',
    text: null,
  },
})
