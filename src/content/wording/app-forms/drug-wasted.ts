import type { FormWords } from '#core/forms/words.ts'

export const drugWasted = {
  kind: 'drug-wasted',
  purpose: 'What was drawn and not given, before a witness.',
  sections: { waste: 'Wasted' },
  fields: {
    drug: { label: 'Drug' },
    amount: { label: 'Amount wasted', help: 'With its unit, for example 6.3 mg.' },
    ampoule: { label: 'Number of the ampoule' },
    because: { label: 'Why' },
    witness: { label: 'Witness', none: 'nobody available' },
  },
} as const satisfies FormWords
