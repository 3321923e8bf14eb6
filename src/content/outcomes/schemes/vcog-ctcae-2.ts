import type { Scheme } from '#core/complications/scheme.ts'
import { vcogNotHeld, vcogRemembered } from './provenance.ts'

const ofTheTerm = { value: [], ...vcogNotHeld } as const

/**
 * Five grades, each described term by term. Death and a life in danger have the same grade in every term; for all else
 * the text of the term decides, and a person reads it.
 */
export const vcogCtcae2Scheme = {
  id: 'vcog-ctcae-2',
  name: 'VCOG-CTCAE',
  version: 'v2 (2021)',
  grades: [
    { grade: '1', label: '1: mild' },
    { grade: '2', label: '2: moderate' },
    { grade: '3', label: '3: severe' },
    { grade: '4', label: '4: life-threatening' },
    { grade: '5', label: '5: death' },
  ],
  byNeed: {
    none: ofTheTerm,
    'wound-care-awake': ofTheTerm,
    'supportive-medicine': ofTheTerm,
    'some-drug': ofTheTerm,
    medicine: ofTheTerm,
    'intervention-awake': ofTheTerm,
    'some-operation': ofTheTerm,
    'intervention-sedation': ofTheTerm,
    'intervention-general-anaesthesia': ofTheTerm,
    'intensive-care': { value: ['4'], ...vcogRemembered },
    death: { value: ['5'], ...vcogRemembered },
  },
  byLasting: null,
  onlyDecided: null,
  readByPerson: { ...vcogRemembered, where: 'the published term, read by the person who wrote the grade' },
  agreement: null,
} as const satisfies Scheme
