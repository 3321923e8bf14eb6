import type { FormWords } from '#core/forms/words.ts'

export const historyItem = {
  kind: 'history-item',
  purpose: 'One dated thing of the past. Write one entry for each.',
  sections: { what: 'What', when: 'When', source: 'Who says so?' },
  fields: {
    topic: {
      label: 'About',
      options: {
        'ear-disease': 'ear disease',
        skin: 'skin and itch',
        'diet-trial': 'diet trial',
        hormones: 'hormone tests',
        'earlier-ear-surgery': 'earlier ear surgery',
        'ear-injury': 'an injury of the ear',
        'closed-from-birth': 'a canal closed from birth',
        culture: 'culture',
        anaesthetic: 'earlier anaesthetic',
        hearing: 'hearing',
        'heart-or-airway': 'heart or airway',
        other: 'something else',
      },
    },
    text: { label: 'What happened' },
    from: { label: 'From', help: '2019, or March 2024, or 5 March 2024. Leave empty when nobody knows.' },
    until: { label: 'Until', help: 'Leave empty when it goes on, or nobody knows.' },
    source: {
      label: 'Who says so?',
      options: { owner: 'owner', 'referring-vet': 'referring vet', records: 'records' },
    },
  },
} as const satisfies FormWords
