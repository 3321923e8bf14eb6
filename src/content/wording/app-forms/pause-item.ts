import type { FormWords } from '#core/forms/words.ts'

export const pauseItem = {
  kind: 'pause-item',
  purpose: 'One item of a spoken pause, read aloud and answered.',
  sections: { item: 'Spoken pause' },
  fields: {
    pause: {
      label: 'Which pause?',
      options: {
        'before-anaesthesia': 'before anaesthesia',
        'before-incision': 'before the incision',
        'before-second-ear': 'before the second ear',
        'before-leaving': 'before leaving theatre',
      },
    },
    item: { label: 'What was read aloud?' },
    answer: { label: 'Answered', options: { unknown: 'not known' } },
    because: { label: 'Why, and what is done about it' },
    spokenBy: { label: 'Spoken by' },
    ledBy: { label: 'Led by', none: 'not said' },
  },
} as const satisfies FormWords
