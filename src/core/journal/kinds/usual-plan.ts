import { z } from 'zod'
import { speciesList } from '#core/animal/species.ts'
import { doseUnits, routes, uses } from '#core/formulary/words.ts'
import { id, shortText } from '../answers.ts'
import { defineKind } from '../kind.ts'
import { storedQuantity } from '../stored.ts'

/** A named dose plan of the house; each line carries one chosen dose with its reason. */
export const usualPlan = defineKind({
  name: 'usual-plan',
  version: 1,
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
          because: shortText,
        }),
      )
      .min(1),
  }),
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
        because: 'Half of the ceiling, so that a splash stays possible.',
      },
    ],
  },
})
