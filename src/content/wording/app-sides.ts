import type { SidesWording } from '#core/chapters/sides.ts'

/** Where a side is said, and where sources of it disagree, in English. */
export const sidesInEnglish = {
  sources: {
    'referral-reported': 'as reported at the first call',
    findings: 'what was found on the ear',
    imaging: 'the report of the scan or radiograph',
    choice: 'the operation chosen for the ear',
    agreement: 'the agreed plan',
    settled: 'the side settled by a named person',
    booking: 'the booking',
    pause: 'the spoken pause',
    stamp: 'a stamp in theatre',
    'block-site': 'where a local anaesthetic was given',
    specimen: 'the specimen of the operation',
    'photograph-filed': 'the ear a picture was filed to',
    'photograph-shows': 'the side the picture shows',
    'paper-filed': 'the ear a paper was filed to',
    'paper-says': 'the side the paper names',
    summary: 'the signed summary',
    'late-event': 'a late event',
  },
  says: { LEFT: 'LEFT', RIGHT: 'RIGHT', BOTH: 'both ears' },
  source: '{what}, by {who}, {when}',
  sideSays: '{side} is said by',
  notConfirmed: 'The side was not confirmed at',
  settle: {
    block: 'Nothing is cut until a person has settled this.',
    confirm: 'A person looks at this and corrects the one that is wrong.',
  },
} as const satisfies SidesWording

/** A named person settles the side, in English. */
export const settleSideInEnglish = {
  open: 'Settle the side',
  lead: 'Look at the animal, the mark, the images and the papers in hand. Then say which ear it is.',
  which: 'Which ear is it?',
  whichMissing: 'Choose LEFT or RIGHT.',
  wrong: 'You overrule:',
  amend: 'Decided by somebody, so it is amended instead:',
  amendLink: 'Amend: {what}',
  fresh: 'Agreed was {side}. Another ear needs a fresh consent, or a declared emergency.',
  freshLink: 'Write the new agreement',
  emergencyLink: 'Declare an emergency',
  because: 'How you know',
  becauseMissing: 'Say what you looked at: others act on it.',
  keep: 'Keep: it is {side}',
  keepOpen: 'Keep',
  close: 'Close',
} as const
