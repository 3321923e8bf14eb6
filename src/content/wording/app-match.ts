import type { MatchDoubt, MatchReason } from '#core/identity/match.ts'

/** Why a file may be the same animal, and what stands against it, in English. */
export const matchInEnglish = {
  reasons: {
    'same-chip': 'the same chip',
    'chip-two-swapped': 'the same chip but for two digits that changed places',
    'chip-one-digit': 'the same chip but for one digit',
    'same-name-in-household': 'the same name in the same household',
    'surname-changed': 'the same first name of the owner with another surname, and the same animal’s name',
    'same-name-and-phone': 'the same name, and the same phone of the owner',
    'same-name-and-owner': 'the same name, and the same name of the owner',
    'same-phone': 'the same phone of the owner',
    'same-birth': 'born on the same day or in the same month',
  } satisfies Record<MatchReason, string>,
  doubts: {
    'other-chip': 'another chip',
    'other-species': 'another species',
    'other-name': 'another name',
    'other-birth': 'another birth date',
  } satisfies Record<MatchDoubt, string>,
  strengths: { likely: 'Likely the same animal', possible: 'Possibly the same animal' },
  because: 'Because of: {reasons}.',
  against: 'Against it: {doubts}.',
  never: 'Nothing is joined by itself: two people join two files, and can undo it.',
} as const
