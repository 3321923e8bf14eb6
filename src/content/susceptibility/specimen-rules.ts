import type { SpecimenDoubt, SpecimenRules } from '#core/culture/specimen-standing.ts'
import type { Sourced } from '#core/evidence/sourced.ts'

export const specimenRules: SpecimenRules = {
  oldAfter: {
    value: { count: 30, unit: 'days' },
    sources: ['house-judgement'],
    where: 'from when on a report is old for a choice of today: no source says',
    known: 'house',
    strength: 'practice',
    confidence: 'low',
    checked: '2026-11-30',
  },
}

/** Why such a specimen should not lead, by what was counted. */
export const specimenFacts: Partial<Record<SpecimenDoubt | 'on-entry', Sourced<string>>> = {
  canal: {
    value: 'canal and middle ear differed in organism or pattern in 89 of 100 ears',
    sources: ['cole-1998'],
    where: '89.5 %, remembered from its abstract',
    known: 'remembered',
    strength: 'study',
    confidence: 'medium',
    checked: '2026-11-30',
  },
  'on-entry': {
    value:
      'samples on entry and after lavage differed in 84 of 100 ears, and 26 of 100 ears grew bacteria only after lavage',
    sources: ['hettlich-2005'],
    where: 'abstract: 34 dogs, 47 ears',
    known: 'read',
    strength: 'study',
    confidence: 'high',
    checked: '2026-11-30',
  },
}
