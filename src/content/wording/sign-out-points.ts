import type { SignOutCode } from '#core/theatre/sign-out-codes.ts'

/** What keeps an operation from being signed out: on the screens, in Owed and on the report. */
export const signOutPoints = {
  'specimen-unlabelled': 'Nobody said that the label is on pot {label}',
  'label-twice': 'Two pots carry the label {label}',
  'count-missing': 'The count is missing: {when}',
  'count-unequal': '{what}: {found} found, {expected} expected',
  'count-item-missing': '{what}: counted before the cut ({expected}), not at the end',
  'throat-pack-in': 'The throat pack is in',
  'throat-pack-unsaid': 'Nobody said where the throat pack is',
  'side-unconfirmed': 'The side that was done was not confirmed aloud',
  'side-differs': 'Entries name different sides',
} as const satisfies Record<SignOutCode, string>

/** The same points without their particulars, for an incident note. */
export const signOutPointNames = {
  'specimen-unlabelled': 'a pot without its label',
  'label-twice': 'one label on two pots',
  'count-missing': 'a count that is missing',
  'count-unequal': 'a count that does not agree',
  'count-item-missing': 'something counted before and not at the end',
  'throat-pack-in': 'the throat pack is in',
  'throat-pack-unsaid': 'where the throat pack is',
  'side-unconfirmed': 'the side was not confirmed aloud',
  'side-differs': 'entries name different sides',
} as const satisfies Record<SignOutCode, string>
