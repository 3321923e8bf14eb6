import { z } from 'zod'
import { speciesList } from '#core/animal/species.ts'
import { doseUnits, routes, uses } from '#core/formulary/words.ts'
import { id, shortText } from '../answers.ts'
import { defineKind, keyOf } from '../kind.ts'
import { storedQuantity } from '../stored.ts'

/** A dose this house starts from when nobody chose one: one drug, species and use, with the reason; author and date are the entry's own. */
export const dosePolicy = defineKind({
  name: 'dose-policy',
  version: 1,
  subjects: ['clinic'],
  body: z.strictObject({
    drug: id,
    species: z.enum(speciesList),
    use: z.enum(uses),
    /** Null: whatever the route. */
    route: z.enum(routes).nullable(),
    qualifier: shortText.nullable(),
    dose: storedQuantity(...doseUnits),
    because: shortText,
  }),
  naturalKey: ({ drug, species, use, route, qualifier }) => keyOf(drug, species, use, route ?? '', qualifier ?? ''),
  example: {
    drug: 'maropitant',
    species: 'dog',
    use: 'antiemetic',
    route: 'SC',
    qualifier: null,
    dose: { value: '1', unit: 'mg/kg' },
    because: 'The label dose.',
  },
})
