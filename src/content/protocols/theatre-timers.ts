import type { TimerRules } from '#core/theatre/timers.ts'
import { quantity } from '#core/units/quantity.ts'
import { commonPractice } from '../follow-up/provenance.ts'

/** When the clocks of the theatre ask for something. The next dose of an antimicrobial stands with its own row. */
export const theatreTimers: TimerRules = {
  beforeIncision: {
    value: quantity('60', 'min'),
    sources: ['uk-surgical-prophylaxis'],
    where: 'the first dose within 60 minutes before the incision',
    known: 'remembered',
    strength: 'guideline',
    confidence: 'high',
    checked: '2026-11-29',
  },
  otherBeforeIncision: [
    {
      value: quantity('30', 'min'),
      sources: ['vetsurgeryonline-prophylaxis'],
      where: 'within 30 min of incision',
      known: 'read',
      strength: 'web',
      confidence: 'high',
      checked: '2026-11-29',
    },
  ],
  observeEvery: { value: quantity('5', 'min'), ...commonPractice, checked: '2026-11-29' },
}
