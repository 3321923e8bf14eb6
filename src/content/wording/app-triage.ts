import type { AskNow, RedFlag, Urgency, UrgencyStanding } from '#core/referral/triage.ts'

/** The first call, in English: red flags, how urgent and why, what to ask before the call ends. */
export const triageInEnglish = {
  signs: {
    'head-tilt': 'Head tilt',
    falling: 'Falling or circling',
    'drooped-face': 'Drooped face',
    'mouth-will-not-open': 'Mouth will not open',
    'swelling-under-ear': 'Swelling under the ear',
    'not-eating': 'Not eating',
    'severe-pain': 'Severe pain',
    'bleeding-mass': 'Bleeding mass',
    'eye-red-or-shut': 'Eye red or shut',
  } satisfies Record<RedFlag, string>,
  urgencies: { today: 'today', 'this-week': 'this week', routine: 'routine' } satisfies Record<Urgency, string>,
  suggested: 'By what was answered: {urgency}.',
  atLeast: 'At least {urgency} by what was answered; ask the rest before deciding.',
  nothingYet: 'Nothing can be suggested before the open questions are asked.',
  noRedFlag: 'Every red flag was asked about and none was named.',
  askNow: 'Ask now',
  ask: {
    sign: '{sign}? A “yes” makes it {urgency}.',
    'drug-allergy': 'Was a drug ever not tolerated?',
    'flat-face': 'Is it a flat-faced breed?',
    'may-fetch-records': 'May we fetch the records?',
  } satisfies Record<AskNow['kind'], string>,
  compared: {
    'as-suggested': '',
    sooner: 'Sooner than suggested: say why.',
    later: 'Later than the answers ask for: say why.',
    'nothing-suggested': 'Chosen before everything was asked: say why.',
  } satisfies Record<UrgencyStanding['compared'], string>,
  tellOwner: [
    'Bring every medicine and every result.',
    'Never stop steroid tablets at once.',
    'Food as usual unless we say otherwise.',
  ],
} as const
