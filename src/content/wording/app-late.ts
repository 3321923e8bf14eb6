import type { IndexDoubt, IndexReason } from '#core/late/index-ears.ts'
import type { LateSign } from '#core/late/late-sign-names.ts'
import { matchInEnglish } from './app-match.ts'

/** What people complain of late after an operation, in English. */
export const lateSignNames = {
  'draining-tract': 'a draining tract',
  abscess: 'an abscess',
  swelling: 'a swelling',
  'jaw-pain': 'pain of the jaw',
  'ear-pain': 'pain at the ear',
  complaint: 'another complaint',
} as const satisfies Record<LateSign, string>

/** Offering the operated ears to which a late sign may belong, in English. */
export const lateInEnglish = {
  title: 'Does this belong to an ear we operated?',
  heard: 'Heard in what was told: {signs}.',
  lead: 'A trouble deep in an operated ear can show itself years later, under another name. Say to which of these ears it belongs; what is said can be taken back.',
  asking: 'Looking for ears that were operated here.',
  away: 'The server does not answer, so nobody can look for an operated ear now. It will be owed to the front desk to look.',
  awayHere: 'The server does not answer, so nobody can look for an operated ear now.',
  nobody: 'No ear on file that was operated here fits.',
  question: 'It belongs to',
  ear: '{side} ear of {name}, {procedure} on {day}, {ago}',
  ago: { one: '1 month before', many: '{count} months before' },
  agoDays: '{count} days before',
  file: 'Owner {owner}, {phone}, chip {chip}.',
  unknown: 'not on record',
  open: 'Open the case of {name}',
  none: 'none of these ears',
  unsure: 'not sure: the surgeon is owed to say within {days} days',
  strengths: {
    'this-file': 'The ear of this animal',
    likely: 'Likely',
    possible: 'Possible',
  },
  reasons: {
    ...matchInEnglish.reasons,
    'same-file': 'it was operated in this very file',
    'owner-first-name': 'the same first name of the owner',
    'same-name': 'the same name of the animal',
    'same-breed': 'the same breed',
  } satisfies Record<IndexReason, string>,
  doubts: {
    ...matchInEnglish.doubts,
    'other-owner': 'another name of the owner',
    'other-side': 'the other ear was told of',
    died: 'the animal of that file is on record as dead',
  } satisfies Record<IndexDoubt, string>,
  tractOn: 'A late swelling, abscess or tract of this ear is on record from {day}.',
  what: 'What is told of, as it is written down at that ear',
  because: 'In your words',
  becauseHelp: 'What you asked, what they said.',
  leftOff: {
    one: '1 more ear fits less well and is not shown.',
    many: '{count} more ears fit less well and are not shown.',
  },
  never: 'No files are joined by this. Two people join two files, on a page of its own.',
  missing: 'Choose one of the ears, none, or not sure.',
  keep: 'Keep the answer',
  event: 'Told of {name}, owner {owner}: “{said}”',
  saidAnew: 'Said anew to which ear it belongs.',
  mayNot: 'Everybody who works here may say it; whoever may only read may not.',
  notice: {
    title: 'Told here: {signs}. It may belong to an ear we operated.',
    title2: 'Told here: {signs}. It was put to an ear that was operated here.',
    told: '{when}: “{said}”',
    say: 'Say to which ear it belongs',
    chosen: '{side} ear, in the file of {name}. Its late event stands there.',
    notJoined: 'The two files are not joined.',
    join: 'Join the two files',
  },
  page: {
    title: 'To which ear does it belong?',
    nothing: 'Nothing was told in this file that could be a late sign and still waits for an answer.',
    back: 'Back to the case',
    next: 'The next one',
  },
  kept: {
    event: 'It was written down as {what} at the {side} ear of {name}; that ear is open again.',
    open: 'Open the case of {name}',
    notJoined: 'This call stands in a file of its own. The two files are not joined.',
    join: 'Join the two files',
    unsure: 'Not sure to which operated ear it belongs: the surgeon is owed to say within {days} days.',
    away: 'Nobody could look for an operated ear: the front desk is owed to look.',
  },
  said: '{strength}. Because of: {reasons}.',
  against: 'Against it: {doubts}.',
} as const
