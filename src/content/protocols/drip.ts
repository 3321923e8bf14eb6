import type { DripRules } from '#core/dosing/rules.ts'

/** Gravity sets: their arithmetic, the numbers they are sold with, and what runs through one. */
export const drip: DripRules = {
  formula: {
    sources: ['drip-rate-page'],
    where: 'drops per mL × mL/h ÷ 60; count your own set',
    known: 'read',
    strength: 'web',
    confidence: 'high',
    checked: '2026-11-29',
  },
  sets: {
    value: ['10', '15', '20', '60'],
    sources: ['usual-products'],
    where: 'drops per mL printed on sets; 20 is the usual one',
    known: 'common-practice',
    strength: 'practice',
    confidence: 'high',
    checked: '2026-11-29',
  },
  uses: {
    value: ['fluid', 'fluid_bolus', 'blood_product'],
    sources: ['house-judgement'],
    where: 'a drug is run by a pump: gravity keeps no rate',
    known: 'house',
    strength: 'practice',
    confidence: 'medium',
    checked: '2026-11-29',
  },
}
