import type { FormWords } from '#core/forms/words.ts'

export const shelfItem = {
  kind: 'shelf-item',
  purpose: 'One product this clinic really has on its shelf.',
  sections: { product: 'Product', stock: 'In stock' },
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
    expires: {
      label: 'Use until',
      help: 'The last day, of the pack that ends first. A month on the label means its last day.',
      none: 'not written down',
    },
    outSince: { label: 'Out of stock since', help: 'Empty while there is some left.', none: 'in stock' },
    controlled: {
      label: 'Kept in the controlled-drug register?',
      help: 'Which drugs local law wants in a register is yours to know; the program does not decide it.',
      options: { yes: 'yes', no: 'no' },
      none: 'nobody said yet',
    },
  },
} as const satisfies FormWords
