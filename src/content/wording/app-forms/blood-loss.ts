import type { FormWords } from '#core/forms/words.ts'

export const bloodLoss = {
  kind: 'blood-loss',
  purpose: 'What was in the jar and on the swabs since the last entry of this kind.',
  sections: { jar: 'Jar and lavage', swabs: 'Swabs weighed' },
  fields: {
    jar: { label: 'Fluid in the jar' },
    lavageIn: { label: 'Lavage poured in' },
    lavageInJar: {
      label: 'Lavage found again in the jar',
      help: 'What was not measured cannot be taken away; the loss is then a span.',
      none: 'not measured',
    },
    swabs: { label: 'Swabs weighed', add: 'Add a lot of swabs', item: 'Lot {number}' },
    'swabs.dry': { label: 'Dry' },
    'swabs.wet': { label: 'Wet' },
    'swabs.saline': { label: 'Saline on them' },
  },
} as const satisfies FormWords
