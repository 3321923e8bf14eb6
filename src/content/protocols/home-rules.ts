import type { HomeRules } from '#core/dosing/rules.ts'
import { wardRules } from '../follow-up/ward-rules.ts'

const house = {
  sources: ['house-judgement'],
  known: 'house',
  strength: 'practice',
  confidence: 'medium',
  checked: '2026-11-30',
} as const

/** What is asked about where an animal goes home. How often an eye is kept wet is the ward's own rule. */
export const homeRules: HomeRules = {
  firstDoseWithin: {
    value: { days: 3 },
    ...house,
    where: 'a medicine for home begins in the first days; one that waits longer is asked about, never refused',
  },
  farthest: {
    value: { months: 18 },
    ...house,
    where: 'the course is followed for a year; half a year more is a late visit, beyond it a slip of the year',
  },
  eyeWithoutBlink: {
    'eye-gel': hoursOf('eye-gel'),
    'eye-ointment': hoursOf('eye-ointment'),
  },
}

function hoursOf(used: 'eye-gel' | 'eye-ointment'): HomeRules['eyeWithoutBlink'][typeof used] {
  const { value, ...provenance } = wardRules.every[used]
  return { value: [value.from.count, value.until.count], ...provenance }
}
