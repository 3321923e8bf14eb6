import type { EarRules } from '#core/dosing/rules.ts'
import { quantity } from '#core/units/quantity.ts'

/** What holds for every ear that is open, and for one that nobody looked into. */
export const earRules: EarRules = {
  harmless: {
    value: ['crystalloid'],
    sources: ['zooveterinary-ear-cleaning', 'nuttall-cole-2004'],
    where:
      'saline or water only until the drum is seen; read in the first, the second is remembered for the same caution',
    known: 'read',
    strength: 'web',
    confidence: 'medium',
    checked: '2026-11-29',
  },
  inEarFor: {
    value: quantity('24', 'h'),
    sources: ['house-judgement'],
    where: 'how long drops are taken to be in an ear: no source says',
    known: 'house',
    strength: 'practice',
    confidence: 'low',
    checked: '2026-11-29',
  },
  opensBulla: {
    value: ['teca-lbo', 'ventral-bulla-osteotomy'],
    sources: ['standard-surgical-anatomy'],
    where: 'bulla osteotomy from the side or from below',
    known: 'remembered',
    strength: 'textbook',
    confidence: 'high',
    checked: '2026-11-29',
  },
}
