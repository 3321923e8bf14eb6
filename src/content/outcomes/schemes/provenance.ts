import type { Provenance } from '#core/evidence/sourced.ts'

const checked = '2026-11-30'

/** The proposals of 2010 for orthopaedics: known to exist from what was read, their words remembered. */
export const cookRemembered = {
  sources: ['cook-2010'],
  where: 'proposed definitions of complications and time frames',
  known: 'remembered',
  strength: 'guideline',
  confidence: 'high',
  checked,
} as const satisfies Provenance

/** Said of something the remembered words do not name. */
export const cookUnclear = {
  ...cookRemembered,
  where:
    'the remembered words name further treatment, surgical or medical; cleaning and a dressing alone are not named',
  confidence: 'medium',
} as const satisfies Provenance

/** The grades for people, as later papers print the table; the adaptation for dogs took them over grade by grade. */
export const dindoRead = {
  sources: ['dindo-2004', 'barrett-2023'],
  where:
    'table of grades for people, read where later papers print it; how it was adapted to dogs is known from an abstract',
  known: 'read',
  strength: 'guideline',
  confidence: 'medium',
  checked,
} as const satisfies Provenance

export const barrettRead = {
  sources: ['barrett-2023'],
  where: 'abstract, results: 76 scenarios, four surgeons',
  known: 'read',
  strength: 'study',
  confidence: 'high',
  checked,
} as const satisfies Provenance

export const vcogRemembered = {
  sources: ['leblanc-2021'],
  where: 'general rule of the grades: 4 life-threatening, 5 death; the words of each term are not held here',
  known: 'remembered',
  strength: 'guideline',
  confidence: 'high',
  checked,
} as const satisfies Provenance

/** The grades 1 to 3 have a text of their own for each term. */
export const vcogNotHeld = {
  ...vcogRemembered,
  where: 'grades 1 to 3 are described term by term, and those descriptions are not held here',
} as const satisfies Provenance
