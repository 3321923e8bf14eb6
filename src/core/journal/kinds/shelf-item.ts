import { z } from 'zod'
import { id, shortText } from '../answers.ts'
import { defineKind } from '../kind.ts'
import { storedQuantity } from '../stored.ts'

/** One product this clinic really has on its shelf. */
export const shelfItem = defineKind({
  name: 'shelf-item',
  version: 1,
  subjects: ['clinic'],
  body: z.strictObject({
    item: id,
    drug: id,
    label: shortText,
    form: z.enum(['injection', 'tablet', 'oral-liquid', 'eye', 'inhaled', 'fluid']),
    strength: storedQuantity('mg/mL', 'ug/mL', '[iU]/mL', 'mg/{tablet}', '%', 'mmol/mL').nullable(),
    divides: z.enum(['whole', 'halves', 'quarters']).nullable(),
  }),
  naturalKey: (body) => body.item,
  example: {
    item: 'bupivacaine-5',
    drug: 'bupivacaine',
    label: 'Bupivacaine 5 mg/mL, 10 mL',
    form: 'injection',
    strength: { value: '5', unit: 'mg/mL' },
    divides: null,
  },
})
