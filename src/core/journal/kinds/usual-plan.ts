import { z } from 'zod'
import { speciesList } from '#core/animal/species.ts'
import { doseUnits, routes, uses } from '#core/formulary/words.ts'
import { id, shortText } from '../answers.ts'
import type { Json } from '../canonical.ts'
import { howGiven } from '../how-given.ts'
import { defineKind } from '../kind.ts'
import { storedQuantity } from '../stored.ts'

/** A named dose plan of the house; each line carries one chosen dose with its reason. */
export const usualPlan = defineKind({
  name: 'usual-plan',
  version: 2,
  subjects: ['clinic'],
  body: z.strictObject({
    plan: shortText,
    species: z.enum(speciesList),
    lines: z
      .array(
        z.strictObject({
          line: id,
          drug: id,
          use: z.enum(uses),
          route: z.enum(routes),
          /** The bracket of the formulary row ("day 1", "EU label"), when the row has one. */
          qualifier: shortText.nullable(),
          dose: storedQuantity(...doseUnits),
          shelfItem: id.nullable(),
          /** From which bag or syringe, in which tablets, how long; null where nothing of it is said. */
          how: howGiven.nullable(),
          because: shortText,
        }),
      )
      .min(1),
  }),
  /** Version 1 said neither bag nor loading dose, tablet or course. */
  upcasts: {
    1: (older) => {
      const plan = older as { readonly lines: readonly Record<string, Json>[] } & Record<string, Json>
      return { ...plan, lines: plan.lines.map((line) => ({ ...line, how: null })) }
    },
  },
  naturalKey: (body) => body.plan,
  example: {
    plan: 'our usual plan, dog',
    species: 'dog',
    lines: [
      {
        line: 'block',
        drug: 'bupivacaine',
        use: 'local_block',
        route: 'infiltration',
        qualifier: null,
        dose: { value: '1', unit: 'mg/kg' },
        shelfItem: 'bupivacaine-5',
        how: null,
        because: 'Half of the ceiling, so that a splash stays possible.',
      },
    ],
  },
})
