/** What keeps an operation from being signed out, until it is settled or an incident note names it and says why. */
export const signOutCodes = [
  'specimen-unlabelled',
  'label-twice',
  'count-missing',
  'count-unequal',
  'count-item-missing',
  'throat-pack-in',
  'throat-pack-unsaid',
  'side-unconfirmed',
  'side-differs',
] as const
export type SignOutCode = (typeof signOutCodes)[number]
