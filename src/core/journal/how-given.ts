import { z } from 'zod'
import { carriers } from '#core/formulary/carriers.ts'
import { stockUnits } from '#core/formulary/words.ts'
import { shortText } from './answers.ts'
import { storedQuantity } from './stored.ts'

export const containerKinds = ['bag', 'syringe'] as const
export const ownVolumes = ['withdrawn', 'added'] as const
export const divisions = ['whole', 'halves', 'quarters', 'unknown'] as const

/**
 * How a dose is given besides drug, route and amount: from which bag or syringe, over which time, in which tablets, how
 * often and how long. Null is "not said". One shape for the plan of an operation and for the house's usual plans.
 */
export const howGiven = z.strictObject({
  /** The words of a formulation that has doses of its own. */
  formulation: shortText.nullable(),
  over: storedQuantity('min').nullable(),
  container: z
    .strictObject({
      kind: z.enum(containerKinds),
      /** Lines of one plan that name the same one share it. */
      name: shortText,
      volume: storedQuantity('mL'),
      rate: storedQuantity('mL/h', 'mL/kg/h'),
      ownVolume: z.enum(ownVolumes).nullable(),
      fluid: z.enum(carriers).nullable(),
    })
    .nullable(),
  loading: z
    .strictObject({ dose: storedQuantity('mg/kg', 'ug/kg'), over: storedQuantity('min').nullable() })
    .nullable(),
  tablet: z
    .strictObject({
      strength: storedQuantity('mg'),
      divides: z.enum(divisions).nullable(),
      /** Where the label in hand rounds; null while nobody has read it. */
      rounds: z.enum(['up', 'down']).nullable(),
    })
    .nullable(),
  /** The gap between two doses, where the formulary leaves a choice. */
  every: storedQuantity('h').nullable(),
  days: z.number().int().min(1).max(366).nullable(),
  /** The marks of the syringe that comes with an oral liquid. */
  mark: storedQuantity('mL').nullable(),
  /** What the label of an oral liquid says; null while nobody has read it. */
  xylitolFree: z.boolean().nullable(),
  /** The gravity set a fluid runs through. */
  set: storedQuantity('[drp]/mL').nullable(),
  /** How what is in hand was mixed: so much of a product made up to so much. */
  mixed: z
    .strictObject({ from: storedQuantity(...stockUnits), product: storedQuantity('mL'), final: storedQuantity('mL') })
    .nullable(),
})

export type HowGiven = z.infer<typeof howGiven>
