import { z } from 'zod'
import { procedureIds } from '#core/animal/procedure.ts'
import { speciesList } from '#core/animal/species.ts'
import { ownOutcomes } from '#core/evidence/own/own-outcome.ts'
import { countUnits } from '#core/evidence/study.ts'
import { day, text } from '../answers.ts'
import { defineKind, keyOf } from '../kind.ts'

/** Our own counts, each of one outcome in one unit. */
export const ownFigures = z
  .array(
    z
      .strictObject({
        outcome: z.enum(ownOutcomes),
        unit: z.enum(countUnits),
        events: z.int().min(0).max(1_000_000),
        total: z.int().min(0).max(1_000_000),
        lost: z.int().min(0).max(1_000_000),
        from: day.nullable(),
        until: day.nullable(),
      })
      .refine(({ events, total }) => events <= total, {
        path: ['events'],
        message: 'must not be more than the total',
      }),
  )
  .min(1)
  .max(200)

/** Our own counted results of one operation, as a person approved them: from then on the next owner hears them. */
export const figuresApproved = defineKind({
  name: 'figures-approved',
  version: 1,
  subjects: ['clinic'],
  body: z.strictObject({
    species: z.enum(speciesList),
    procedure: z.enum(procedureIds),
    /** The figures are those of this day; ears whose time came later are not in them. */
    asOf: day,
    figures: ownFigures,
    text: text.nullable(),
  }),
  naturalKey: ({ species, procedure }) => keyOf(species, procedure),
  example: {
    species: 'dog',
    procedure: 'teca-lbo',
    asOf: '2026-06-30',
    figures: [
      {
        outcome: 'facial_nerve_deficit_any',
        unit: 'ear',
        events: 0,
        total: 12,
        lost: 1,
        from: '2025-01-14',
        until: '2026-05-20',
      },
    ],
    text: null,
  },
})
