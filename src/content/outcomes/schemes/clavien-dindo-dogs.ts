import type { Scheme } from '#core/complications/scheme.ts'
import { barrettRead, dindoRead } from './provenance.ts'

const one = { ...dindoRead, where: 'grade I: also pain relief, fluids, a wound opened at the bedside' } as const
const sedated = {
  ...dindoRead,
  where: 'the table asks whether the animal was under general anaesthesia; of sedation it says nothing, so it was not',
  confidence: 'low',
} as const

/** Five grades by the treatment that was needed, after Clavien and Dindo, as adapted to dogs. Words of our own. */
export const clavienDindoDogsScheme = {
  id: 'clavien-dindo-dogs',
  name: 'Clavien–Dindo, adapted to dogs',
  version: '2023',
  grades: [
    { grade: 'I', label: 'I: off the usual course, no treatment but support or wound care' },
    { grade: 'II', label: 'II: needed other medicine, or blood' },
    { grade: 'IIIa', label: 'IIIa: needed an intervention without general anaesthesia' },
    { grade: 'IIIb', label: 'IIIb: needed an intervention under general anaesthesia' },
    { grade: 'IV', label: 'IV: life in danger, intensive care' },
    { grade: 'V', label: 'V: death' },
  ],
  byNeed: {
    none: { value: ['I'], ...dindoRead },
    'wound-care-awake': { value: ['I'], ...one },
    'supportive-medicine': { value: ['I'], ...one },
    'some-drug': { value: ['I', 'II'], ...dindoRead },
    medicine: { value: ['II'], ...dindoRead },
    'intervention-awake': { value: ['IIIa'], ...dindoRead },
    'some-operation': { value: ['IIIa', 'IIIb'], ...dindoRead },
    'intervention-sedation': { value: ['IIIa'], ...sedated },
    'intervention-general-anaesthesia': { value: ['IIIb'], ...dindoRead },
    'intensive-care': { value: ['IV'], ...dindoRead },
    death: { value: ['V'], ...dindoRead },
  },
  byLasting: null,
  onlyDecided: { ...barrettRead, where: 'abstract, conclusion: sequelae and failures to cure are told apart first' },
  readByPerson: null,
  agreement: { value: { all: 0.62, setApart: 0.975 }, ...barrettRead },
} as const satisfies Scheme
