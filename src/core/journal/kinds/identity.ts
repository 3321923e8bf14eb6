import { z } from 'zod'
import { speciesList } from '#core/animal/species.ts'
import { id, moment, shortText } from '../answers.ts'
import { defineKind } from '../kind.ts'

/** Who the animal is. Names and phones of people stand in the registers; here only their ids. */
export const identity = defineKind({
  name: 'identity',
  version: 1,
  subjects: ['animal'],
  body: z.strictObject({
    name: shortText,
    species: z.enum(speciesList),
    breed: shortText.nullable(),
    sex: z.enum(['female', 'male', 'unknown']),
    neutered: z.enum(['yes', 'no', 'unknown']),
    born: moment.nullable(),
    /** ISO 11784/11785, kept as text so that leading zeros stay. */
    chip: z
      .string()
      .regex(/^\d{15}$/, 'must be 15 digits')
      .nullable(),
    household: id,
    referringVet: id.nullable(),
    flatFace: z.enum(['yes', 'no', 'unknown']),
    abcb1: z.enum(['normal', 'mutant-normal', 'mutant-mutant', 'unknown']),
  }),
  naturalKey: (_, subject) => (subject.kind === 'animal' ? subject.animal : undefined),
  example: {
    name: 'Bramble',
    species: 'dog',
    breed: 'English Springer Spaniel',
    sex: 'female',
    neutered: 'yes',
    born: { at: '2018-05-01T00:00:00.000Z', zone: 'Europe/London', precision: 'month', by: 'person' },
    chip: '000000000000001',
    household: 'household-1',
    referringVet: null,
    flatFace: 'no',
    abcb1: 'unknown',
  },
})
