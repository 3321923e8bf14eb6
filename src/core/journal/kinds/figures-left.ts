import { z } from 'zod'
import { procedureIds } from '#core/animal/procedure.ts'
import { speciesList } from '#core/animal/species.ts'
import { day, text } from '../answers.ts'
import { defineKind, keyOf } from '../kind.ts'
import { figuresApproved, ownFigures } from './figures-approved.ts'

/** A person looked at counts that changed and left what owners hear as it is, with the reason; until they change again. */
export const figuresLeft = defineKind({
  name: 'figures-left',
  version: 1,
  subjects: ['clinic'],
  body: z.strictObject({
    species: z.enum(speciesList),
    procedure: z.enum(procedureIds),
    /** The counts that were looked at are those of this day. */
    asOf: day,
    figures: ownFigures,
    because: text,
  }),
  naturalKey: ({ species, procedure }) => keyOf(species, procedure),
  example: {
    species: 'dog',
    procedure: 'teca-lbo',
    asOf: '2026-06-30',
    figures: figuresApproved.example.figures,
    because: 'Two of the three owners have not been reached yet; we look again next month.',
  },
})
