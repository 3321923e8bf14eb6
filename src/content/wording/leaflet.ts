import type { Species } from '#core/animal/species.ts'
import type { Sourced } from '#core/evidence/sourced.ts'
import type { optionIds } from '#core/journal/kinds/choice.ts'
import { commonPractice } from '../follow-up/provenance.ts'

type OptionId = (typeof optionIds)[number]

/** The same five things about every choice, so that none is sold and none is hidden. */
export type OptionWords = {
  readonly name: string
  readonly species: readonly Species[]
  readonly told: Sourced<{
    readonly what: string
    readonly good: string
    readonly bad: string
    readonly home: string
  }>
}

const both = ['dog', 'cat'] as const

/** The edition of the words below; an agreement names it, so changing the words asks for a new number here. */
export const leafletEdition = 'owner-leaflet 1'

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
  fields: { what: 'What it is', good: 'Good side', bad: 'Bad side', home: 'At home' },
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
  ofNone: 'none seen (at most {high})',
  source: '[{numbers}]',
  unknown: 'Not known for a {species}',
  unknownIntro: 'We found no study that counted these. Not known does not mean never.',
  noFigures:
    'We found no study that counted what happens with this choice. We can only tell you what we know from our work.',
  own: 'Our own results',
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

/** All choices, each told in the same depth; `species` says for whom it is a choice at all. */
export const leafletOptions = {
  'medical-control': {
    name: 'Go on with drops and tablets',
    species: both,
    told: {
      value: {
        what: 'Drops, tablets and ear washes go on. The cause, such as an allergy, is treated too.',
        good: 'No operation. The ear canal stays.',
        bad: 'It often means care for life. Once the canal has closed, drops cannot reach the sore place.',
        home: 'You clean and treat the ear, often each day, and come for checks.',
      },
      ...commonPractice,
    },
  },
  'deep-flush': {
    name: 'A deep ear wash',
    species: both,
    told: {
      value: {
        what: 'While your pet sleeps, the deep part of the ear is washed out. We look at the drum and take samples.',
        good: 'No cut. The ear canal stays.',
        bad: 'The cause stays, so the ear can fill up again. Nothing can pass a closed canal.',
        home: 'You give drops or tablets for weeks and come for checks.',
      },
      ...commonPractice,
    },
  },
  'lateral-wall-resection': {
    name: 'Open the upper canal to the side',
    species: both,
    told: {
      value: {
        what: 'The outer wall of the upper canal is cut open, so that air and drops get in.',
        good: 'A smaller operation. The deep canal and the drum stay.',
        bad: 'It only helps while the deep canal is well. What made the ear sick goes on.',
        home: 'The ear needs care for life.',
      },
      ...commonPractice,
    },
  },
  'vertical-canal-ablation': {
    name: 'Take out the upper canal',
    species: both,
    told: {
      value: {
        what: 'The upper part of the canal is taken out. The lower part gets a new opening.',
        good: 'The lower canal and the drum stay.',
        bad: 'It fails when the lower canal or the middle ear is sick. The new opening can grow narrow.',
        home: 'You care for the new opening, for life.',
      },
      ...commonPractice,
    },
  },
  'teca-lbo': {
    name: 'Take out the whole ear canal and clean the middle ear',
    species: both,
    told: {
      value: {
        what: 'The whole canal is taken out. The bubble of bone behind the drum is opened from the side and cleaned. The skin is closed. The ear flap stays.',
        good: 'The sore canal is gone. That ear needs no more drops.',
        bad: 'The nerve of the face lies close by, and the eye may not blink for a time, or for good. Less is heard on that side. If some lining stays behind, a deep infection can come back, even years from now.',
        home: 'Some weeks with a collar, tablets and care of the wound. If the blink is weak, the eye needs gel many times a day. Later, pain or a swelling is the warning sign.',
      },
      ...commonPractice,
    },
  },
  'subtotal-ablation': {
    name: 'Take out most of the canal',
    species: both,
    told: {
      value: {
        what: 'The upper canal and a part of the lower one are taken out. The deep end and the middle ear stay.',
        good: 'The ear flap often keeps its shape. We stay away from the deep nerves.',
        bad: 'What stays can get sick again. It does not help a sick middle ear.',
        home: 'Some weeks with a collar and care of the wound. The skin of the ear needs care for life.',
      },
      ...commonPractice,
    },
  },
  'ventral-bulla-osteotomy': {
    name: 'Open the middle ear from below',
    species: both,
    told: {
      value: {
        what: 'The bubble of bone behind the drum is opened from the throat side and cleaned. The ear canal stays.',
        good: 'The canal stays. The whole middle ear can be seen.',
        bad: 'Nerves of the eye and of balance lie inside the bubble. A sick canal stays sick.',
        home: 'Some weeks of rest and care of the wound. A tilted head needs time and help on stairs.',
      },
      ...commonPractice,
    },
  },
  traction: {
    name: 'Pull out the polyp',
    species: ['cat'],
    told: {
      value: {
        what: 'A polyp is a soft lump on a stalk. While your cat sleeps, it is pulled out through the ear or the mouth.',
        good: 'A short treatment, often without a cut.',
        bad: 'The root may stay behind, so it can grow again.',
        home: 'Tablets for a time. Watch for the old signs.',
      },
      ...commonPractice,
    },
  },
  'no-treatment': {
    name: 'Do not treat the ear',
    species: both,
    told: {
      value: {
        what: 'The ear is left as it is. We can still treat the pain.',
        good: 'No operation, and no strain of treatment.',
        bad: 'A sore ear goes on hurting. The infection can go deeper, to balance and to the jaw.',
        home: 'You watch for a tilted head, falling, or pain on eating, and phone us if you see it.',
      },
      ...commonPractice,
    },
  },
  euthanasia: {
    name: 'Put to sleep',
    species: both,
    told: {
      value: {
        what: 'Your pet is put to sleep without pain.',
        good: 'It ends pain that nothing else can end.',
        bad: 'It is final.',
        home: 'Nobody must decide this today. We name it because it is one of the choices. We do not press.',
      },
      ...commonPractice,
    },
  },
} as const satisfies Record<OptionId, OptionWords>
