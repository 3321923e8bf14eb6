import { z } from 'zod'
import { day, id, shortText } from '../answers.ts'
import type { Json } from '../canonical.ts'
import { defineKind } from '../kind.ts'
import { storedQuantity } from '../stored.ts'

/** One product this clinic really has on its shelf. */
export const shelfItem = defineKind({
  name: 'shelf-item',
  version: 2,
  subjects: ['clinic'],
  body: z.strictObject({
    item: id,
    drug: id,
    label: shortText,
    form: z.enum(['injection', 'tablet', 'oral-liquid', 'eye', 'inhaled', 'fluid']),
    strength: storedQuantity('mg/mL', 'ug/mL', '[iU]/mL', 'mg/{tablet}', '%', 'mmol/mL').nullable(),
    divides: z.enum(['whole', 'halves', 'quarters']).nullable(),
    /** The last day on which the oldest pack may be used; null: nobody wrote it down. */
    expires: day.nullable(),
    /** Since when there is none left; null: there is some. Who found it is the author of the entry. */
    outSince: day.nullable(),
    /** Whether this house keeps a controlled-drug register of it; null: nobody said. Local law is the house's to know. */
    controlled: z.enum(['yes', 'no']).nullable(),
  }),
  /** Version 1 knew neither expiry nor stock, and nobody had been asked whether it is controlled. */
  upcasts: {
    1: (older) => ({ ...(older as Record<string, Json>), expires: null, outSince: null, controlled: null }),
  },
  naturalKey: (body) => body.item,
  example: {
    item: 'bupivacaine-5',
    drug: 'bupivacaine',
    label: 'Bupivacaine 5 mg/mL, 10 mL',
    form: 'injection',
    strength: { value: '5', unit: 'mg/mL' },
    divides: null,
    expires: '2027-03-31',
    outSince: null,
    controlled: 'no',
  },
})
