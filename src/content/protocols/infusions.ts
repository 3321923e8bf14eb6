import type { InfusionRules } from '#core/dosing/rules.ts'
import { Decimal, quantity } from '#core/units/quantity.ts'

const house = {
  sources: ['house-judgement'],
  known: 'house',
  strength: 'practice',
  confidence: 'medium',
  checked: '2026-11-29',
} as const

/** Bags and syringes on a pump. */
export const infusions: InfusionRules = {
  pumpStep: {
    value: quantity('0.1', 'mL/h'),
    ...house,
    where: 'standard pumps and 50 to 60 mL syringes are set in tenths of a millilitre an hour, remembered',
  },
  ownShare: {
    value: new Decimal('0.05'),
    ...house,
    where: 'about 5 % of the bag; the published recipes do not all take it out, so the convention is named',
  },
  within: { value: new Decimal('0.02'), ...house, where: 'worked back from the label, within 2 %' },
  plateau: {
    value: { halfLives: 5, reached: new Decimal('0.97') },
    sources: ['mynavas-infusions'],
    where: 'about five half-lives to 97 % of the plateau',
    known: 'read',
    strength: 'web',
    confidence: 'high',
    checked: '2026-11-29',
  },
}
