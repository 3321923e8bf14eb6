import type { SwabFacts } from '#core/theatre/blood-swabs.ts'
import { quantity } from '#core/units/quantity.ts'

const checked = '2026-11-25'
const counted = {
  sources: ['blood-loss-flashcards'],
  known: 'read',
  strength: 'handout',
  confidence: 'low',
  checked,
} as const

/** How swabs are read. Visual guesses in small animals were off by −99 to +248 mL, so a count is an estimate. */
export const bloodInSwabs = {
  density: {
    value: '1.0',
    sources: ['vitello-2015', 'vet-surg-2006-gravimetric'],
    where: 'abstracts; 1.06 g/mL if strict, 6 % less',
    known: 'read',
    strength: 'study',
    confidence: 'high',
    checked,
  },
  soaked: {
    'gauze-10-cm': {
      value: { low: quantity('10', 'mL'), high: quantity('15', 'mL') },
      ...counted,
      where: '15 mL for a soaked gauze of 10 × 10 cm was read; the lower end is a house estimate',
    },
    'lap-sponge': {
      value: { low: quantity('50', 'mL'), high: quantity('75', 'mL') },
      ...counted,
      where: 'soaked lap sponge',
    },
  },
} as const satisfies SwabFacts
