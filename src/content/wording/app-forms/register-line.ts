import type { FormWords } from '#core/forms/words.ts'

export const registerLine = {
  kind: 'register-line',
  purpose: 'One line of a controlled-drug register.',
  sections: { line: 'Line' },
  fields: {
    drug: { label: 'Drug' },
    strength: { label: 'Strength' },
    form: {
      label: 'Form',
      options: {
        injection: 'injection',
        tablet: 'tablet',
        'oral-liquid': 'liquid by mouth',
        eye: 'for the eye',
        inhaled: 'inhaled',
        fluid: 'fluid',
      },
    },
    what: {
      label: 'What happened',
      options: {
        opening: 'opening stock, counted when this register began',
        received: 'received',
        drawn: 'drawn for an animal',
        counted: 'counted',
        destroyed: 'destroyed',
        broken: 'broken or spilt',
        'sent-back': 'sent back',
        lost: 'missing, could not be explained',
        found: 'more than written, as in an overfilled vial',
      },
    },
    amount: {
      label: 'How much',
      help: 'With its unit: what was drawn or moved; of a count, what stands in the cabinet.',
    },
    ampoule: {
      label: 'Number of the ampoule',
      help: 'The same number that the dose and the waste are written with. Of a bottle: number every draw.',
    },
    case: { label: 'For which animal', none: 'no animal' },
    paper: { label: 'Number of the paper' },
    witness: { label: 'Witness', none: 'nobody available' },
    text: { label: 'In words' },
  },
} as const satisfies FormWords
