import type { FormWords } from '#core/forms/words.ts'

export const household = {
  kind: 'household',
  purpose: 'The people around the animal: who decides, who pays, who nurses at home.',
  sections: { contacts: 'People of this household', home: 'At home' },
  fields: {
    contacts: { label: 'People of this household', add: 'Add a person', item: 'Person {number}' },
    'contacts.contact': { label: 'Who' },
    'contacts.roles': {
      label: 'Part in the household',
      options: {
        owner: 'owner',
        'nurses-at-home': 'nurses at home',
        pays: 'pays',
        'in-emergency': 'phone in an emergency',
      },
    },
    'contacts.mayConsent': { label: 'May this person consent?' },
    language: {
      label: 'Language we speak with them',
      help: 'As a tag: en for English, pt-BR for Portuguese of Brazil.',
      options: { en: 'English' },
      wrong: 'Write the language as a tag, for example en or pt-BR.',
    },
    otherAnimals: { label: 'Other animals at home', help: 'Leave empty when there are none or nobody asked.' },
  },
} as const satisfies FormWords
