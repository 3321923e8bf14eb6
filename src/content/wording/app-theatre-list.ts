import type { TheatreLine } from '#core/theatre/theatre-list.ts'
import type { TheatreMissingCode } from '#core/theatre/theatre-missing.ts'

/** The theatre list, in English: plain lines by date, no grid. */
export const theatreListInEnglish = {
  states: {
    agreed: 'agreed',
    'not-agreed': 'not agreed yet',
    done: 'done',
  } satisfies Record<TheatreLine['state'], string>,
  missing: {
    'side-disagreement': 'The sources of the side disagree',
    consent: 'Consent for this side, procedure and surgeon',
    'consent-fingerprint': 'The consent does not fit its plan any more: ask again',
    conflicts: '{count} conflicts to settle: {kinds}',
    baseline: 'Face, eye and balance before any sedative',
    weight: 'Weight on the scale',
    'planned-lines': 'The planned doses',
    'second-check': 'The second check of the planned doses',
    fasting: 'How long this animal goes without food',
    anaesthetist: 'Who gives the anaesthetic',
    'medicine-active': 'What is in “{written}”',
  } satisfies Record<TheatreMissingCode, string>,
  levels: { block: 'no cut before this', confirm: 'a reason and a second person', note: 'worth knowing' },
  complete: 'Nothing is missing',
  lastMeal: 'Last meal between {from} and {until}; water stays',
  fastingUnknown: 'Not on record: {missing}',
  admissionAt: 'Comes in between {from} and {until}',
  admissionDay: 'Comes in on {day}; the clinic has not set a time',
  weight: '{weight} kg, {when}',
  noWeight: 'not weighed yet',
} as const
