import type { FormWords } from '#core/forms/words.ts'

export const twelveMonths = {
  kind: 'twelve-months',
  purpose: 'Where the operated ear stands after a year.',
  sections: { source: 'How we know', result: 'Result' },
  fields: {
    source: {
      label: 'How do we know?',
      options: {
        'our-examination': 'our examination',
        'referring-vet': 'referring vet',
        owner: 'owner',
        'nobody-reached': 'nobody was reached',
      },
    },
    tries: { label: 'Tries to reach the owner' },
    status: {
      label: 'The ear is',
      help: 'Nobody reached after the tries is “not known”, never “fine”.',
      options: { solved: 'solved', improved: 'improved', failed: 'failed', unknown: 'not known' },
    },
    face: {
      label: 'Face on this side',
      options: { normal: 'normal', weak: 'weak', absent: 'no movement', unknown: 'not known' },
    },
    wouldChooseAgain: { label: 'Would the owner choose it again?', options: { unknown: 'not known' } },
    text: { label: 'In words' },
  },
} as const satisfies FormWords
