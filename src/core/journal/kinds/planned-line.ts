import { z } from 'zod'
import { bloodGroups } from '#core/animal/blood-group.ts'
import { unitList } from '#core/units/unit.ts'
import { id, shortText } from '../answers.ts'
import type { Json } from '../canonical.ts'
import { howGiven } from '../how-given.ts'
import { defineKind, keyOf } from '../kind.ts'
import { storedQuantity } from '../stored.ts'

const anyQuantity = storedQuantity(...(unitList as [(typeof unitList)[number], ...typeof unitList]))

/** One line of the dose plan as it was worked out and by whose choice the dose stands. */
export const plannedLine = defineKind({
  name: 'planned-line',
  version: 2,
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
    /** The product of the shelf it is drawn from; its strength stands here as it was then. */
    shelfItem: id.nullable(),
    stock: anyQuantity.nullable(),
    how: howGiven.nullable(),
    /** A loss of water made good beside the rate of a fluid. */
    deficit: z.strictObject({ percent: storedQuantity('%'), over: storedQuantity('h') }).nullable(),
    /** Blood: what it is to reach, the group of the donor, and what the cross-match said. */
    blood: z
      .strictObject({
        goal: z
          .strictObject({ now: storedQuantity('%'), aim: storedQuantity('%'), donorPcv: storedQuantity('%') })
          .nullable(),
        donor: z.enum(bloodGroups).nullable(),
        crossMatch: z.enum(['compatible', 'incompatible']).nullable(),
      })
      .nullable(),
    amount: anyQuantity,
    volume: storedQuantity('mL').nullable(),
    drawn: storedQuantity('mL').nullable(),
    /** What was worked out besides: the pump, the label of the bag, the loading dose, the tablets; null in lines of old. */
    worked: z
      .strictObject({
        rate: storedQuantity('mL/h').nullable(),
        /** What the drawn volume holds, as it is written on the bag or syringe. */
        label: anyQuantity.nullable(),
        fluid: storedQuantity('mL').nullable(),
        loading: z.strictObject({ amount: anyQuantity, drawn: storedQuantity('mL').nullable() }).nullable(),
        tablets: storedQuantity('{tablet}').nullable(),
        /** What leaves the clinic for the course. */
        dispense: storedQuantity('{tablet}', 'mL').nullable(),
      })
      .nullable(),
    /** The weight the line was worked out with. */
    weight: storedQuantity('kg'),
  }),
  /** Version 1 kept neither bag nor loading dose, tablet, course or product. */
  upcasts: {
    1: (older) => ({
      ...(older as Record<string, Json>),
      shelfItem: null,
      how: null,
      deficit: null,
      blood: null,
      worked: null,
    }),
  },
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
    shelfItem: null,
    stock: { value: '5', unit: 'mg/mL' },
    how: null,
    deficit: null,
    blood: null,
    amount: { value: '8.2', unit: 'mg' },
    volume: { value: '1.64', unit: 'mL' },
    drawn: { value: '1.6', unit: 'mL' },
    worked: null,
    weight: { value: '8.2', unit: 'kg' },
  },
})
