import type { FormWords } from '#core/forms/words.ts'

export const shelfItem = {
  kind: 'shelf-item',
  purpose: 'One product this clinic really has on its shelf.',
  sections: { product: 'Product' },
  fields: {
    item: { label: 'Short name', help: 'For example bupivacaine-5.' },
    drug: { label: 'Drug' },
    label: { label: 'As written on the label' },
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
    strength: { label: 'Strength', help: 'With its unit, for example 5 mg/mL or 50 mg in a tablet.' },
    divides: {
      label: 'Tablets divide into',
      options: { whole: 'not at all', halves: 'halves', quarters: 'quarters' },
      none: 'no tablet',
    },
  },
} as const satisfies FormWords
