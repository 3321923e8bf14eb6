import { z } from 'zod'
import { id, shortText } from '../answers.ts'
import { defineKind, keyOf } from '../kind.ts'
import { storedQuantity } from '../stored.ts'

/**
 * One line of a controlled-drug register, of one drug, strength and form: what came, was drawn, went otherwise, or was
 * counted. Given and wasted stand in the case, and are joined to what was drawn by the number of the ampoule.
 */
export const registerLine = defineKind({
  name: 'register-line',
  version: 1,
  subjects: ['clinic'],
  body: z.strictObject({
    drug: id,
    strength: storedQuantity('mg/mL', 'ug/mL', '[iU]/mL', 'mg/{tablet}', '%', 'mmol/mL'),
    form: z.enum(['injection', 'tablet', 'oral-liquid', 'eye', 'inhaled', 'fluid']),
    what: z.enum(['opening', 'received', 'drawn', 'counted', 'destroyed', 'broken', 'sent-back', 'lost', 'found']),
    amount: storedQuantity('mL', '{tablet}'),
    /** Of a draw: the number of the ampoule; of a bottle, the number of this draw from it. */
    ampoule: shortText.nullable(),
    /** Of a draw: the case it was drawn for. */
    case: id.nullable(),
    /** The delivery note, or the paper under which it was destroyed or sent back. */
    paper: shortText.nullable(),
    /** Null: nobody was available, and the page says so. */
    witness: id.nullable(),
    text: shortText.nullable(),
  }),
  /** An ampoule is drawn once, and a register opens once; a second line of that is for a person to settle. */
  naturalKey: ({ drug, strength, form, what, ampoule }) => {
    const of = (...more: readonly string[]) => keyOf(drug, strength.value, strength.unit, form, ...more)
    if (what === 'opening') return of('opening')
    return what === 'drawn' && ampoule !== null ? of('drawn', ampoule) : undefined
  },
  example: {
    drug: 'methadone',
    strength: { value: '10', unit: 'mg/mL' },
    form: 'injection',
    what: 'drawn',
    amount: { value: '1', unit: 'mL' },
    ampoule: 'A-1',
    case: 'case:0001',
    paper: null,
    witness: 'person-nurse',
    text: null,
  },
})
