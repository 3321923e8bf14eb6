/** Above a list that the server is making again after a policy or a closed day of the house changed. */
export const listsBehind = {
  said: 'Being worked out again after a change of the house: {made} of {of} cases. The others still stand here as before the change.',
} as const

/** The lists of the clinic, in English: Owed and Find. */
export const owedScreen = {
  title: 'Owed',
  lead: 'What is due, why, from whom and until when. Writing the entry takes it off the list.',
  mine: 'Mine',
  everyone: 'Everyone’s',
  show: 'Whose',
  first: 'First',
  firstHelp: 'An animal may come to harm while these wait.',
  late: 'Late',
  now: 'Due now',
  later: 'Later',
  lateBy: 'late by {days}',
  dueBy: 'by {day}',
  dueFrom: 'from {day}',
  since: 'since {day}',
  days: { one: '1 day', many: '{count} days', today: 'less than a day' },
  none: 'Nothing is owed. What comes next begins with a case or a new call.',
  find: 'Find a case',
  noneMine: 'Nothing is owed by you. Look at everyone’s before you go home.',
  noneAtAll: 'There is no case yet. The first one begins with a referral.',
  newReferral: 'New referral',
  why: 'Why here',
  standsHere: 'Its place in the list: {risk}.',
  settle: { write: 'Write it', conflict: 'Settle it', file: 'File it', register: 'Open it' },
  sources: 'Sources: {list}',
  open: 'Open the case of {name}',
  more: 'Show {count} more',
  dog: 'dog',
  cat: 'cat',
} as const

export const findScreen = {
  title: 'Find',
  lead: 'By the animal’s name, its chip, the owner’s name or phone.',
  label: 'Name, chip, owner or phone',
  all: 'All cases',
  found: { none: 'Nothing fits “{text}”.', one: '1 case fits', many: '{count} cases fit' },
  noneHelp: 'Part of a name or the last digits of a phone or chip are enough. Is the animal new?',
  newReferral: 'New referral',
  empty: 'There is no case yet.',
  chip: 'Chip {chip}',
  noChip: 'No chip on record',
  owner: '{name}, {phone}',
  noPhone: 'no phone',
  chapter: 'Chapter: {chapter}',
  conflicts: { one: '1 conflict to settle', many: '{count} conflicts to settle' },
} as const
