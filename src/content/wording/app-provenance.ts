import type { Confidence, Known, Strength } from '#core/evidence/sourced.ts'

/** How a number is known, in English: a short mark beside it, and the whole of it when the mark is opened. */
export const provenanceInEnglish = {
  /** The short mark: what kind of source, and how we know it. */
  mark: '{strength}, {known}',
  lowMark: '{mark}, low confidence',
  strengths: {
    label: 'label',
    guideline: 'guideline',
    study: 'study',
    textbook: 'textbook',
    handout: 'hand-out',
    web: 'web page',
    practice: 'practice',
  } satisfies Record<Strength, string>,
  known: {
    read: 'read',
    remembered: 'remembered',
    'common-practice': 'common practice',
    house: 'house judgement',
  } satisfies Record<Known, string>,
  confidence: { high: 'high', medium: 'medium', low: 'low' } satisfies Record<Confidence, string>,
  heads: {
    source: 'Source',
    where: 'Where in it',
    known: 'How we know it',
    strength: 'What kind of source',
    confidence: 'How surely it was copied',
    checked: 'Last compared with its source',
  },
  noWhere: 'page or table not recorded',
  seenAt: 'seen at: {place}',
  longKnown: {
    read: 'Read in the source, or where it is quoted.',
    remembered: 'Remembered and not read again: look it up before you rely on it.',
    'common-practice': 'Common practice of the trade; no paper is named for it.',
    house: 'A judgement of this house.',
  } satisfies Record<Known, string>,
  longStrength: {
    label: 'The label of a product.',
    guideline: 'A guideline.',
    study: 'A published study.',
    textbook: 'A textbook.',
    handout: 'A hand-out of a course or a table for the wall.',
    web: 'A page on the web.',
    practice: 'Practice: nobody has published it.',
  } satisfies Record<Strength, string>,
  longConfidence: {
    high: 'High.',
    medium: 'Medium.',
    low: 'Low: treat it as a hint.',
  } satisfies Record<Confidence, string>,
  said: 'How this is known: ',
} as const
