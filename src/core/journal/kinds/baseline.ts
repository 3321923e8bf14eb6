import { z } from 'zod'
import { blink, shortText, yesNo } from '../answers.ts'
import { defineKind } from '../kind.ts'
import { storedQuantity } from '../stored.ts'

const face = z.strictObject({
  blink,
  lipOrEarDroop: yesNo,
  nostril: z.enum(['moist', 'dry', 'not-assessed']),
  pupil: z.enum(['normal', 'small', 'large', 'not-assessed']),
  thirdEyelidUp: yesNo,
  /** Schirmer tear test; null is "not done". */
  tearTest: storedQuantity('mm/min').nullable(),
  fluorescein: z.enum(['negative', 'positive', 'not-assessed']),
})

/** Face, eye and balance before any sedative: what decides later whether a droopy face is disease or damage. */
export const baseline = defineKind({
  name: 'baseline',
  version: 1,
  subjects: ['animal'],
  body: z.strictObject({
    beforeSedation: z.boolean(),
    drugsOnBoard: z.array(shortText),
    LEFT: face,
    RIGHT: face,
    headTilt: z.enum(['none', 'left', 'right', 'not-assessed']),
    nystagmus: yesNo,
    unsteady: yesNo,
    gag: z.enum(['present', 'weak', 'absent', 'not-assessed']),
    hears: yesNo,
  }),
  example: {
    beforeSedation: true,
    drugsOnBoard: [],
    LEFT: {
      blink: 'normal',
      lipOrEarDroop: 'no',
      nostril: 'moist',
      pupil: 'normal',
      thirdEyelidUp: 'no',
      tearTest: { value: '18', unit: 'mm/min' },
      fluorescein: 'negative',
    },
    RIGHT: {
      blink: 'normal',
      lipOrEarDroop: 'no',
      nostril: 'moist',
      pupil: 'normal',
      thirdEyelidUp: 'no',
      tearTest: { value: '20', unit: 'mm/min' },
      fluorescein: 'negative',
    },
    headTilt: 'none',
    nystagmus: 'no',
    unsteady: 'no',
    gag: 'present',
    hears: 'not-assessed',
  },
})
