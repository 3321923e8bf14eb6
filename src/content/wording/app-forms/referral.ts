import type { FormWords } from '#core/forms/words.ts'

export const referral = {
  kind: 'referral',
  purpose: 'The first call: what was said, how urgent it is and why in words.',
  sections: {
    caller: 'The call',
    'red-flags': 'Red flags',
    safety: 'Before the visit',
    urgency: 'How urgent, and why',
  },
  fields: {
    caller: {
      label: 'Who is calling?',
      options: { owner: 'owner', 'referring-vet': 'referring vet', other: 'somebody else' },
    },
    contact: { label: 'Caller', help: 'Leave open when the caller is not in the list yet.', none: 'not in the list' },
    reportedSide: {
      label: 'Side, as said by the caller',
      help: 'Kept as reported. The examination says which ear it is.',
      options: { BOTH: 'BOTH', unknown: 'not said' },
    },
    complaint: { label: 'What is wrong, in the caller’s words' },
    daysOfSigns: { label: 'Days of signs', help: 'The number of days. Leave empty when nobody knows.' },
    signs: { label: 'Ask about each of these now' },
    'signs.sign': {
      label: 'Sign',
      options: {
        'head-tilt': 'Head tilt',
        falling: 'Falling or cannot stand',
        'drooped-face': 'Drooped face',
        'mouth-will-not-open': 'Mouth will not open',
        'swelling-under-ear': 'Swelling under the ear',
        'not-eating': 'Not eating',
        'severe-pain': 'Severe pain',
        'bleeding-mass': 'Bleeding mass',
        'eye-red-or-shut': 'Eye red or shut',
      },
    },
    'signs.answer': { label: 'Answer' },
    drugAllergy: { label: 'Drug allergy' },
    'drugAllergy.answer': { label: 'Was a drug ever not tolerated?' },
    'drugAllergy.what': { label: 'Which drug, and what happened' },
    mayFetchRecords: { label: 'May we fetch the records from the referring practice?' },
    urgency: {
      label: 'When must this animal be seen?',
      options: { today: 'today', 'this-week': 'this week', routine: 'routine' },
    },
    because: { label: 'Because', help: 'The reason in words. The next person reads this, not the label.' },
  },
} as const satisfies FormWords
