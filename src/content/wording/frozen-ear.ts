/** What an erratum says of one ear of a frozen year. */
export const frozenEarWords = {
  'known-yes': 'yes',
  'known-no': 'no',
  'known-not': 'not known',
  'on-record': 'on record',
  'not-on-record': 'not on record',
  'as-then': 'as it was then',
  'otherwise-now': 'otherwise',
  'no-day': 'none',
  'ear-on-record': 'the operated ear',
  'operation-as': 'species, operation and side',
  'same-animal': 'which animal it is',
  'tract-on': 'first day of a late swelling, abscess or tract',
  'died-on': 'day of death',
  'blink-lost-on': 'first day of a weaker blink',
} as const
