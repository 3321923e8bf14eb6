import type { TransfusionRules } from '#core/dosing/rules.ts'
import { bloodPerKg } from './blood-per-kg.ts'

const article = {
  sources: ['dvm360-blood-types-2010'],
  known: 'read',
  strength: 'web',
  confidence: 'high',
  checked: '2026-11-29',
} as const

const texts = {
  sources: ['transfusion-texts'],
  known: 'remembered',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-29',
} as const

/** Why red cells are held back until the blood group is known. */
export const transfusion: TransfusionRules = {
  catsTyped: { ...texts, where: 'cats are typed always, the first transfusion included' },
  groups: { ...article, where: 'type B cats given type A blood: sudden breakdown of the cells; B given to A: delayed' },
  dogs: {
    ...article,
    where: 'antibodies a dog was born with are held to matter little; DEA 1 sensitises a negative dog',
  },
  byGoal: {
    drug: 'whole-blood',
    sources: ['transfusion-texts', 'vetprep-transfusion'],
    where: 'the formula is remembered from the first, a worked case was read in the second',
    known: 'remembered',
    strength: 'textbook',
    confidence: 'high',
    checked: '2026-11-29',
  },
  bloodPerKg,
  crossMatch: { ...texts, where: 'no second transfusion without a cross-match' },
}
