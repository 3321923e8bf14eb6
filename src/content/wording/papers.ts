import type { Side, Species } from '#core/animal/species.ts'
import type { Known } from '#core/evidence/sourced.ts'

/** Words that every paper shares, in English. */
export const papersInEnglish = {
  language: 'en-GB',
  notRecorded: 'not recorded',
  notKnown: 'not known',
  nobodyAvailable: 'nobody available',
  phone: 'Phone {phone}',
  dated: 'Written {date}',
  provenance: '{stream} · made from {count} entries, the last of {last}',
  conflicts: 'CONFLICTS TO SETTLE: {count}',
  pending: 'ENTRIES STILL MISSING: {count}',
  known: {
    read: 'read',
    remembered: 'remembered, not read again',
    'common-practice': 'common practice, no publication claimed',
    house: 'our own judgement',
  } satisfies Record<Known, string>,
  source: '{citation} ({known})',
  sourceAt: '{citation}; {where} ({known})',
  pleaseNote: 'Please note',
  signedOn: 'Date',
  sides: { LEFT: 'LEFT', RIGHT: 'RIGHT' } satisfies Record<Side, string>,
  species: { dog: 'dog', cat: 'cat' } satisfies Record<Species, string>,
  sexes: { female: 'female', male: 'male', unknown: 'sex not known' },
  neutered: { yes: 'neutered', no: 'not neutered', unknown: 'neutering not known' },
  born: 'born {date}',
  chip: 'chip {chip}',
} as const

/** Said beside a paper of the owner that is not in the language of the household. */
export const otherLanguageInEnglish = {
  none: 'This household is spoken with in another language ({language}). This paper exists in English only; go through it together.',
  wanted:
    'This household is spoken with in another language ({language}), and this paper exists in it. Somebody asked for this one.',
} as const

/** Why a paper cannot be made yet; said to the clinic, in English whatever the household speaks. */
export const notYetInEnglish = {
  'no-identity': 'the file does not say yet who the animal is',
  'no-findings': 'no ear has been examined and no choice talked over yet',
  'no-plan': 'no dose has been planned for this operation yet',
  operated: 'the operation is over; nothing more is drawn up for it',
  'no-weight': 'no weight is on record',
  'no-emergency-rows': 'the emergency rows of this species are not at hand',
  'no-operation': 'no operation is booked',
  'no-specimen': 'no pot of this operation is on record yet',
  'not-operated': 'nothing has been stamped or signed in theatre yet',
  'not-discharged': 'the animal has not gone home yet',
  'no-referring-vet': 'no referring vet is on record',
  'nothing-to-report': 'there is neither a finding nor an operation to write about yet',
  dead: 'the animal has died; nothing is asked of the owner any more',
  'not-agreed': 'nothing has been agreed yet',
} as const

export type NotYetReason = keyof typeof notYetInEnglish
