import type { FormWords } from '#core/forms/words.ts'

export const told = {
  kind: 'told',
  purpose: 'Somebody outside the clinic was told. It closes the loop of a result.',
  sections: { told: 'Who was told what' },
  fields: {
    about: { label: 'About which entry?' },
    who: {
      label: 'Who was told?',
      options: { owner: 'owner', 'referring-vet': 'referring vet', carer: 'the one who cares for the animal at home' },
    },
    contact: { label: 'Person' },
    by: {
      label: 'How',
      options: {
        phone: 'by phone',
        'in-person': 'in person',
        letter: 'letter',
        email: 'email',
        'owner-link': 'the owner’s link',
      },
    },
    text: { label: 'What was said or asked' },
  },
} as const satisfies FormWords
