/** What owners wrote from home, on the page of the case. */
export const ownerNotesInEnglish = {
  title: 'What the owner wrote',
  lead: 'Sent through the private link, in the owner’s words. Nothing here was read by the program: whatever is urgent in it, a person has to see.',
  note: 'Note of {owner}, {when}',
  seen: 'Seen by the owner on {when}.',
  notSeen: 'The owner did not say when it was seen.',
  about: 'About: {ear}.',
  ears: { LEFT: 'the LEFT ear', RIGHT: 'the RIGHT ear', 'not-sure': 'an ear, the owner is not sure which' },
  keptSince: 'It waited on the owner’s phone since {when}, by the clock of that phone.',
  language: 'Written on the page in {language}.',
  onlyPictures: 'Only pictures, no words.',
  answered: '{person} answered, {when}:',
  open: 'Not answered. Due {when}.',
  spoken: 'Settled by a call.',
  died: 'Not answered; the animal has died.',
  answer: 'Your answer',
  answerHelp:
    'The owner reads it behind the link, with your name and the date, when the page is opened again. Nobody is told that it is there: what cannot wait is said on the telephone.',
  missing: 'Write the answer first.',
  keep: 'Keep the answer',
  more: 'Answer again',
  older: { one: 'One older note', many: '{count} older notes' },
} as const
