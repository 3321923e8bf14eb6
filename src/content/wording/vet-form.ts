import type { vetAsks } from '#core/journal/kinds/vet-answer.ts'
import type { AnswerFault } from '#core/vet/read-answer.ts'

/** The short form of a referring practice. For colleagues: trade words, short. English only, as the letters to them are. */
export const vetFormInEnglish = {
  title: '{name}: how is the ear?',
  /** For {practice}, from {clinic}. */
  from: 'From {clinic}, for {practice}',
  about: '{name}, {species}',
  species: { dog: 'dog', cat: 'cat' },
  ears: { LEFT: 'LEFT ear', RIGHT: 'RIGHT ear' },
  /** One line for each ear. */
  operated: 'Operated on the {side}: today is day {day} after the operation.',
  window: 'We would like to know by {until}. A later look is welcome too.',
  wantTitle: 'What we would like to know',
  want: {
    stitches: [
      'Has the wound closed, and are the stitches out, or may they come out?',
      'Can {name} close the eye on the operated side?',
    ],
    wound: [
      'Has the wound closed and stayed closed?',
      'Is there any swelling, pain or discharge over or below it? Write it in the last box: there is no tick for it.',
    ],
    'face-and-eye': [
      'Can {name} close the eye on the operated side?',
      'If you can: a tear test and fluorescein on that eye.',
    ],
    recheck: [
      'Is there any swelling, pain or discharge on the operated side, also below the ear or at the jaw? Write it in the last box: there is no tick for it.',
      'Can {name} close the eye on the operated side?',
    ],
    year: [
      'Is there any swelling, pain or discharge on the operated side, also below the ear or at the jaw? Write it in the last box: there is no tick for it.',
      'Are face, eye and balance as you would expect them?',
    ],
    stretch: ['Whatever you see of the operated side, each time you see {name}.'],
  } satisfies Record<(typeof vetAsks)[number], readonly string[]>,
  phoneTitle: 'Phone us now, and do not wait for this form',
  phone: [
    'the eye does not close, is red, weeps, or takes up the stain',
    'swelling or pain over the wound, below the ear, or on opening the mouth',
    'the wound opens, discharges, or the edge of the flap dies',
    'a new head tilt, falling, or eyes that flick',
  ],
  phoneDay: 'Telephone {phone}.',
  phoneNight: 'Out of hours {phone}.',
  form: 'Your answer',
  formLead: 'Leave at “not assessed” what you did not look at. That is an answer too, and never counts as normal.',
  by: 'Who examined',
  byHelp: 'Your name, as it should stand in the record.',
  day: 'Day of the look',
  look: 'What you saw of the {side}',
  unit: '{label} ({unit})',
  text: 'Anything else we should know',
  died: '{name} has died or was put to sleep',
  diedHelp:
    'We phone you before we write it down and before anybody rings the owner. Nothing else is needed then but your name.',
  send: 'Send this to {clinic}',
  again: 'The same link takes another answer after a later look, until {date}.',
  kept: 'Thank you. We have it, and a surgeon reads it.',
  keptTitle: 'Sent',
  before: 'Sent through this link so far',
  beforeLook: 'Look of {day}, by {by}',
  beforeNoLook: 'Sent on {day}, by {by}',
  faultsTitle: 'Nothing was sent yet',
  faultsLead: 'What you typed still stands below.',
  faults: {
    'name-missing': 'Who examined: type your name.',
    'name-too-long': 'Who examined: use 300 letters at most.',
    'day-missing': 'Day of the look: give the day.',
    'no-such-day': 'Day of the look: give a day of the calendar, as year, month and day, for example 2026-03-12.',
    'day-to-come': 'Day of the look: it cannot be later than today.',
    'day-too-early': 'Day of the look: it must be after the day of the operation.',
    'nothing-assessed': 'What you saw: answer at least one question, or phone us.',
    'not-a-number': '{label}: type a number of millimetres, for example 12.',
    'not-normal': '{label}: a sign below says otherwise. Take the tick away, or put the sign right.',
    'text-too-long': 'Anything else: use {letters} letters at most, or phone us.',
  } satisfies Record<AnswerFault, string>,
  tooMany: 'This link was answered many times today. Nothing was sent: please phone us.',
  notKept: 'We could not keep this. Nothing was sent: please try again, or phone us.',
  privacy:
    'This page is for the practice it was sent to. It asks nothing about the owner and shows nothing else of the record.',
  closed: {
    title: 'This page is closed',
    text: 'The link has ended, has run out, or is not complete.',
    whatToDo: 'Phone the clinic: a new one is made in a minute, and what you saw can be told on the telephone.',
    phone: '{clinic}: {phone}',
    wait: 'There were many wrong tries from here. Wait a minute before you try again.',
  },
} as const
