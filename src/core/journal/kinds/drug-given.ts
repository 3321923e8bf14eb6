import { z } from 'zod'
import { id, shortText } from '../answers.ts'
import { defineKind } from '../kind.ts'
import { storedQuantity } from '../stored.ts'

/** What was really given. No rule ever refuses this entry; it is flagged instead. */
export const drugGiven = defineKind({
  name: 'drug-given',
  version: 1,
  subjects: ['operation', 'animal'],
  body: z.strictObject({
    drug: id,
    /** As written on the label, when the drug is not one of ours. */
    written: shortText.nullable(),
    amount: storedQuantity('mg', 'ug', 'mL', '[iU]', 'mmol', '{tablet}', 'ug/kg/h', 'mg/kg/h', 'mL/h', '%{vol}'),
    volume: storedQuantity('mL').nullable(),
    route: shortText,
    site: shortText.nullable(),
    use: shortText,
    line: id.nullable(),
    batch: shortText.nullable(),
    ampoule: shortText.nullable(),
  }),
  example: {
    drug: 'bupivacaine',
    written: null,
    amount: { value: '8', unit: 'mg' },
    volume: { value: '1.6', unit: 'mL' },
    route: 'infiltration',
    site: 'great auricular nerve, left',
    use: 'local_block',
    line: 'block',
    batch: null,
    ampoule: null,
  },
})
