import { commonPractice } from '../follow-up/provenance.ts'

/** The edition of these words and of those in options.ts; an agreement names it, so changing the words asks for a new number here. */
export const leafletEdition = 'owner-leaflet 2'

/** The owner's leaflet. Plain words, short sentences; grade 8 at most (tested on the whole leaflet). */
export const leafletInEnglish = {
  title: '{name}: a sick ear, and what can be done',
  edition: 'This leaflet',
  editionValue:
    '{edition}. We look it over once a year, and when a new study is out. No maker of a drug or a tool paid for it.',
  ears: 'What we know about the ears',
  earNotExamined: 'The {side} ear has not been looked at yet.',
  ear: 'The {side} ear: {findings}.',
  earFindings: {
    closed: 'the canal is closed',
    severe: 'the canal is very narrow',
    moderate: 'the canal is narrow',
    mild: 'the canal is a little narrow',
    none: 'the canal is open',
    unseen: 'we could not see into the canal',
    boneHard: 'it feels as hard as bone',
    pain: 'it hurts when pressed',
    noPain: 'it does not hurt when pressed',
    mass: 'there is a lump',
    filled: 'the scan shows a filled middle ear',
    air: 'the scan shows air in the middle ear, as it should be',
  },
  basics: 'What is inside',
  basicsText: {
    value: [
      'Behind the opening of the ear lies a canal. It goes down and then inward to the ear drum. Behind the drum is a small bubble of bone: the middle ear.',
      'After years of swelling the canal can close. It can even turn to bone. Then drops cannot reach the sore place any more, and the middle ear fills up.',
      'Beside the canal runs the nerve that moves the face and lets the eye blink. Deeper lie the parts for balance and hearing.',
    ],
    ...commonPractice,
  },
  choices: 'The choices',
  choicesIntro:
    'Every choice has a good side and a bad side. Here they stand with the same weight. Not to treat is a choice too.',
  bothEars: 'Both ears: together, or one after the other?',
  bothEarsIntro: 'Both ears are sick. If both need an operation, this is a choice of its own.',
  chosen: 'You chose this for the {side} ear: {because}',
  declined: 'Talked over for the {side} ear and not chosen: {because}',
  open: 'Talked over for the {side} ear, not decided yet: {because}',
  figures: 'What studies counted: {option}',
  figuresIntro:
    'All numbers say how many of 100. They come from animals in studies. Nobody can say which of the 100 {name} will be.',
  figuresCaption: 'How many of 100, and how sure that is',
  figuresColumns: { what: 'What happened', of: 'Of 100', how: 'Where the number comes from' },
  ofMiddle: 'about {middle}',
  ofSpan: '{low} to {high}',
  ofRange: '(between {low} and {high})',
  ofFewer: 'fewer than 1',
  ofAtMost: '(at most {high})',
  ofNothing: 'no figure',
  ofNone: 'none seen (at most {high})',
  source: '[{numbers}]',
  unknown: 'Not known for a {species}',
  unknownIntro: 'We found no study that counted these. Not known does not mean never.',
  noFigures:
    'We found no study that counted what happens with this choice. We can only tell you what we know from our work.',
  own: 'Our own results',
  ownCounted: 'Our own results are counted. They stand beside the numbers above, with how many there are.',
  ownText: 'We do not print our own results here yet. Ask us how many of these operations we do, and how they went.',
  stays: 'What an operation does not do',
  staysText: {
    value: [
      'It does not cure an allergy. If the skin itches today, it will itch after the operation, and the other ear needs care as before.',
      'It does not bring back hearing. How much {name} hears on that side now is hard to test.',
      'It cannot be undone.',
    ],
    ...commonPractice,
  },
  questions: 'Questions for you',
  questionsText: [
    'What matters most to you: no pain, no risk, a short time of care, or the cost?',
    'Who can give drops and tablets at home, at what times?',
    'How much can you spend? What if it costs more?',
    'What would you find hard to live with: a weak face for some weeks, or an ear that is never quiet?',
    'What do you want to ask us?',
  ],
  undecided: 'You do not have to decide today. “Not decided yet” is an answer.',
  undecidedWord: 'Take your time',
  sources: 'Where the numbers come from',
  sourcesIntro: 'What we read ourselves is marked “read”. Most of it was a summary, not the whole paper.',
  sourceLine: '[{number}] {text}',
} as const
