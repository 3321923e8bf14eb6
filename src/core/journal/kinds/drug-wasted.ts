import { z } from 'zod'
import { id, shortText } from '../answers.ts'
import { defineKind, keyOf } from '../kind.ts'
import { storedQuantity } from '../stored.ts'

/** What was drawn and not given, with a witness, or the plain words that nobody was available. */
export const drugWasted = defineKind({
  name: 'drug-wasted',
  version: 1,
  subjects: ['operation', 'animal'],
  body: z.strictObject({
    drug: id,
    amount: storedQuantity('mg', 'ug', 'mL', '[iU]', '{tablet}'),
    ampoule: shortText,
    witness: id.nullable(),
    because: shortText,
  }),
  naturalKey: (body) => keyOf(body.drug, body.ampoule),
  example: {
    drug: 'methadone',
    amount: { value: '6.3', unit: 'mg' },
    ampoule: 'A-1',
    witness: 'person-nurse',
    because: 'Rest of the ampoule after the dose.',
  },
})
