import type { NeedState, SecondSideNeedName } from '#core/second-side/needs.ts'

/** The part "Second side" on the page of a case: what is asked anew, beside how the first side went. */
export const secondSideInEnglish = {
  title: 'Second side: {side} ear',
  lead: 'The {first} ear was operated on {date}. Nothing of it is taken over for the {side} ear: what stands below is asked anew.',
  decided: 'Decided on {date}.',
  notDecided: 'Booked or planned, and nobody has written the choice of an operation for this ear since.',
  names: {
    choice: 'Choice for this ear',
    baseline: 'Face, eyes and balance before sedation',
    imaging: 'Scan of this ear',
    estimate: 'Estimate',
    consent: 'Consent that names this side',
    booking: 'Operation booked',
    'planned-lines': 'Planned doses',
    weight: 'Weight of the day',
  } satisfies Record<SecondSideNeedName, string>,
  states: {
    new: 'new, {date}',
    unanswered: 'new, {date}; nobody has accepted it',
    'not-yet': 'weighed on {date}; the scale of the day of the operation counts',
    old: 'an older one of {date}; not used',
    missing: 'missing',
  } satisfies Record<NeedState, string>,
  write: 'Write it',
  toAgreement: 'To the agreement',
  toPlan: 'To the dose plan',
  open: { one: '1 of these is still open.', many: '{count} of these are still open.' },
  whole: 'Everything that is asked anew is there.',
  firstTitle: 'How the first side went',
  face: {
    'not-normal':
      'The {first} eye does not blink as it should: {found} on {date} (day {day} after its operation, {source}).',
    normal: 'The {first} eye blinked normally on {date} (day {day} after its operation, {source}).',
    'not-known':
      'Nobody has examined the blink of the {first} eye since its operation in a way that counts. Look before anything is decided.',
  },
  ofOperation: 'Second side: the {first} ear was operated on {date}.',
  toFirst: 'The first operation',
} as const
