import type { FormWords } from '#core/forms/words.ts'

export const medicineBefore = {
  kind: 'medicine-before',
  purpose: 'One medicine given before us. When it stopped decides what may be given now.',
  sections: { medicine: 'The medicine', when: 'When', effect: 'What it did' },
  fields: {
    written: { label: 'As written on the box or letter', help: 'For example: Prednisolone 5 mg tablets.' },
    substance: {
      label: 'Active substance',
      help: 'Settle it when you can: the interaction checks read this.',
      none: 'not settled yet',
    },
    route: {
      label: 'How it was given',
      options: {
        ear: 'into the ear',
        oral: 'by mouth',
        injection: 'injection',
        'depot-injection': 'depot injection',
        skin: 'on the skin',
        eye: 'into the eye',
        unknown: 'not known',
      },
    },
    dose: { label: 'Dose', help: 'As they gave it, for example 1 tablet daily.' },
    from: { label: 'From', help: '2019, or March 2024, or 5 March 2024.' },
    ongoing: { label: 'Is it still given?' },
    until: { label: 'Last given', help: 'The last day it was given, as finely as it is known.' },
    effect: {
      label: 'What it did',
      options: { better: 'better', partly: 'partly better', none: 'nothing', worse: 'worse', unknown: 'not known' },
    },
  },
} as const satisfies FormWords
