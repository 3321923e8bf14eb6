import type { DoseReduction } from '#core/dosing/rules.ts'
import { Decimal } from '#core/units/quantity.ts'

const wsu = {
  sources: ['wsu-problem-drugs'],
  where: '25 % less with one changed copy, 30 to 50 % less with two; the smaller cut is the line here',
  known: 'read',
  strength: 'web',
  confidence: 'high',
  checked: '2026-11-29',
} as const

const renal = {
  sources: ['medicine-texts'],
  where: 'half in chronic kidney disease of cats; remembered',
  known: 'remembered',
  strength: 'textbook',
  confidence: 'medium',
  checked: '2026-11-29',
} as const

/** Where this animal's upper end is lower than the row's: what is left of it. */
export const doseReductions = [
  { drugs: ['acepromazine', 'butorphanol'], word: 'abcb1-carrier', left: new Decimal('0.75'), ...wsu },
  { drugs: ['acepromazine', 'butorphanol'], word: 'abcb1-mutant', left: new Decimal('0.7'), ...wsu },
  { drugs: ['gabapentin'], species: 'cat', word: 'renal-disease', left: new Decimal('0.5'), ...renal },
  { drugs: ['gabapentin'], species: 'cat', word: 'raised-creatinine', left: new Decimal('0.5'), ...renal },
] as const satisfies readonly DoseReduction[]
