import type { FormWords } from '#core/forms/words.ts'

export const wardScore = {
  kind: 'ward-score',
  purpose: 'One round in the ward: pain and what was done about it, eyes, airway, bandage, food, urine.',
  sections: { pain: 'Pain', eyes: 'Eyes', animal: 'The animal', words: 'Anything else' },
  fields: {
    pain: {
      label: 'Pain score',
      help: 'Items of face and ears mislead on a weak or bandaged side: use a scale of behaviour there.',
      none: 'not scored',
      open: 'score now',
    },
    'pain.scale': {
      label: 'Scale',
      options: {
        'glasgow-dog-short': 'Glasgow short form, dog, walked: of 24',
        'glasgow-dog-short-not-walked': 'Glasgow short form, dog, not walked: of 20',
        'glasgow-cat': 'Glasgow, cat, definitive: of 20',
        'glasgow-cat-earlier': 'Glasgow, cat, earlier: of 16',
        'grimace-cat': 'Feline Grimace Scale: of 10',
        'numbers-0-10-cat': 'numerical scale, cat: of 10',
        'house-0-10': 'our own 0 to 10 (house)',
      },
    },
    'pain.score': { label: 'Score', help: 'Whole points, within the range of the scale.' },
    notScoredBecause: { label: 'Why not scored', help: 'Asleep is not without pain.' },
    action: { label: 'What was done', none: 'nothing was done' },
    given: { label: 'Drugs given for it', help: 'The entries that say what was given.' },
    rescoreAt: { label: 'Score again at', help: 'For example 10 February 2026, 15:30.', none: 'no time is set' },
    side: { label: 'Eye' },
    'side.blink': { label: 'Blink', options: { normal: 'normal', weak: 'weak', absent: 'absent' } },
    'side.lubricated': { label: 'Eye kept wet' },
    airway: { label: 'Breathing', options: { quiet: 'quiet', noisy: 'noisy', laboured: 'hard work' } },
    throat: {
      label: 'Throat and neck',
      help: 'Look and feel: swelling comes before noise.',
      options: { soft: 'soft', swollen: 'swollen' },
    },
    bandage: {
      label: 'Bandage',
      help: 'Two fingers under it.',
      options: { none: 'none', fits: 'fits', tight: 'tight', loosened: 'loosened or cut' },
    },
    eats: { label: 'Eats', options: { yes: 'yes', 'a-little': 'a little', no: 'no', 'not-offered': 'not offered' } },
    urine: { label: 'Urine', options: { passed: 'passed', 'not-passed': 'not passed', catheter: 'by catheter' } },
    text: { label: 'Anything else' },
  },
} as const satisfies FormWords
