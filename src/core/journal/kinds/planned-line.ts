import { z } from 'zod'
import { unitList } from '#core/units/unit.ts'
import { id, shortText } from '../answers.ts'
import { defineKind, keyOf } from '../kind.ts'
import { storedQuantity } from '../stored.ts'

const anyQuantity = storedQuantity(...(unitList as [(typeof unitList)[number], ...typeof unitList]))

/** One line of the dose plan as it was worked out and by whose choice the dose stands. */
export const plannedLine = defineKind({
  name: 'planned-line',
  version: 1,
  subjects: ['operation'],
  body: z.strictObject({
    line: id,
    drug: id,
    use: shortText,
    route: shortText.nullable(),
    /** The bracket of the formulary row, when the row has one. */
    qualifier: shortText.nullable(),
    dose: anyQuantity,
    /** Why this dose: the person's words or the plan's. */
    because: shortText,
    plan: shortText.nullable(),
    stock: anyQuantity.nullable(),
    amount: anyQuantity,
    volume: storedQuantity('mL').nullable(),
    drawn: storedQuantity('mL').nullable(),
    /** The weight the line was worked out with. */
    weight: storedQuantity('kg'),
  }),
  naturalKey: (body, subject) => (subject.kind === 'operation' ? keyOf(subject.operation, body.line) : body.line),
  example: {
    line: 'block',
    drug: 'bupivacaine',
    use: 'local_block',
    route: 'infiltration',
    qualifier: null,
    dose: { value: '1', unit: 'mg/kg' },
    because: 'Half of the ceiling, so that a splash stays possible.',
    plan: 'our usual plan, dog',
    stock: { value: '5', unit: 'mg/mL' },
    amount: { value: '8.2', unit: 'mg' },
    volume: { value: '1.64', unit: 'mL' },
    drawn: { value: '1.6', unit: 'mL' },
    weight: { value: '8.2', unit: 'kg' },
  },
})
