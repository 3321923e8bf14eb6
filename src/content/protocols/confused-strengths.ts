import type { ConfusedStrengths } from '#core/dosing/rules.ts'

const traps = {
  sources: ['usual-products', 'house-judgement'],
  where: 'bottles of one name whose strengths have been mistaken for each other',
  known: 'common-practice',
  strength: 'practice',
  confidence: 'medium',
  checked: '2026-11-29',
} as const

const buprenorphine = {
  sources: ['noah-buprenorphine', 'cfr-21-522-230'],
  where: '0.3 mg/mL and 1.8 mg/mL carry one name; their doses lie 12 to 24 times apart',
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-29',
} as const

const alpha2 = {
  sources: ['cfr-21-522-558', 'bsava-sedation-protocols'],
  where: '0.1 and 0.5 mg/mL; medetomidine, 1 mg/mL, is twice the mass for the same effect',
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-29',
} as const

/** Strengths, in mg/mL, that stand beside each other on shelves and are easily taken for each other. */
export const confusedStrengths = [
  { drug: 'buprenorphine', strengths: ['0.3', '1.8'], ...buprenorphine },
  { drug: 'dexmedetomidine', strengths: ['0.1', '0.5'], ...alpha2 },
  { drug: 'medetomidine', strengths: ['1'], beside: 'dexmedetomidine of 0.1 and 0.5 mg/mL, half the mass', ...alpha2 },
  { drug: 'meloxicam', strengths: ['0.5', '1.5', '2', '5'], ...traps },
  { drug: 'hydromorphone', strengths: ['2', '10'], ...traps },
  { drug: 'ketamine', strengths: ['50', '100'], ...traps },
  { drug: 'acepromazine', strengths: ['1', '2', '10'], ...traps },
  { drug: 'epinephrine', strengths: ['0.1', '1'], ...traps },
] as const satisfies readonly ConfusedStrengths[]
