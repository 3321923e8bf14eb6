import { z } from 'zod'
import { defineKind } from '../kind.ts'
import { storedQuantity } from '../stored.ts'

/** What was in the jar and on the swabs since the last entry of this kind. Lavage that was not recovered stays unknown. */
export const bloodLoss = defineKind({
  name: 'blood-loss',
  version: 1,
  subjects: ['operation'],
  body: z.strictObject({
    jar: storedQuantity('mL'),
    lavageIn: storedQuantity('mL'),
    /** How much of the lavage is in the jar; null is "not measured". */
    lavageInJar: storedQuantity('mL').nullable(),
    swabs: z.array(
      z.strictObject({ dry: storedQuantity('g'), wet: storedQuantity('g'), saline: storedQuantity('mL') }),
    ),
  }),
  example: {
    jar: { value: '60', unit: 'mL' },
    lavageIn: { value: '40', unit: 'mL' },
    lavageInJar: { value: '40', unit: 'mL' },
    swabs: [{ dry: { value: '10', unit: 'g' }, wet: { value: '22', unit: 'g' }, saline: { value: '4', unit: 'mL' } }],
  },
})
