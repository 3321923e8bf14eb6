import { z } from 'zod'
import { blink, text, yesNo } from '../answers.ts'
import { defineKind } from '../kind.ts'
import { storedQuantity } from '../stored.ts'

/** Wound, face and eye of an operated ear at one look, whoever looked. The same form each time. */
export const check = defineKind({
  name: 'check',
  version: 1,
  subjects: ['ear'],
  body: z.strictObject({
    seenBy: z.enum(['us', 'referring-vet', 'owner-photograph', 'owner-words']),
    wound: z.enum(['closed', 'gap', 'seroma', 'infected', 'pinna-edge', 'not-assessed']),
    /** What treatment the wound needed; published grades are computed from it. */
    woundNeeded: z.enum(['nothing', 'dressing', 'drug', 'drainage-awake', 'operation', 'not-assessed']),
    sutures: z.enum(['in', 'out', 'none', 'not-assessed']),
    blink,
    lipOrEarDroop: yesNo,
    /** Set when the look fell within the local anaesthetic's duration: not graded as a palsy. */
    possibleBlockEffect: z.boolean(),
    horner: yesNo,
    headTilt: yesNo,
    tearTest: storedQuantity('mm/min').nullable(),
    fluorescein: z.enum(['negative', 'positive', 'not-assessed']),
    painful: yesNo,
    text: text.nullable(),
  }),
  example: {
    seenBy: 'us',
    wound: 'closed',
    woundNeeded: 'nothing',
    sutures: 'out',
    blink: 'weak',
    lipOrEarDroop: 'yes',
    possibleBlockEffect: false,
    horner: 'no',
    headTilt: 'no',
    tearTest: { value: '14', unit: 'mm/min' },
    fluorescein: 'negative',
    painful: 'no',
    text: null,
  },
})
