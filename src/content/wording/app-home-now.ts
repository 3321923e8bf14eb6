/** What is given at home now, on the page of a case. */
export const homeNowInEnglish = {
  title: 'Given at home now',
  none: 'No medicine is given at home any more.',
  line: '{medicine}: {each} at {times}, until {last}; {total} in all.',
  begins: '{medicine}: {each} at {times}, from {first} until {last}; {total} in all.',
  untilSaid: '{medicine}: {each} at {times}, from {first} until the eye is seen to blink well; reminders end {last}.',
  everySecondDay: 'every second day, {times}',
  over: 'Over or stopped',
  ended: '{medicine}: last dose {last}.',
  neverBegun: '{medicine}: stopped before its first dose.',
  stopped: '{medicine}: last dose {last}, stopped from {day}, {time}.',
  unmatched: '“{medicine}” was stopped, and no page of this stay names it. Find out what the animal is given.',
  change: 'Change a medicine',
  stopThis: 'Stop {medicine}',
  replacedWord: 'New home page',
  replaced:
    'Page {number}, made by {what} of {when}. A home page or calendar printed before that no longer counts; it names the medicines of before.',
  made: { 'medicine-change': 'the change', discharge: 'the correction', withdrawal: 'the taking back' },
  paper: 'Page {number}: what was printed before {when} no longer counts.',
} as const
