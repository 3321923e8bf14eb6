import type { FormWords } from '#core/forms/words.ts'

export const arrivedPaper = {
  kind: 'arrived-paper',
  purpose: 'A paper or picture that came in. It waits until a person files it to animal, ear and side.',
  sections: { arrival: 'What came in' },
  fields: {
    came: {
      label: 'Came by',
      options: { post: 'post', email: 'email', phone: 'phone', 'brought-along': 'brought along', other: 'another way' },
    },
    from: { label: 'From', help: 'As they gave themselves: a name, a practice, a number.' },
    seems: {
      label: 'It looks like',
      options: {
        'referral-letter': 'referral letter',
        'laboratory-report': 'laboratory report',
        'pathology-report': 'pathology report',
        'imaging-report': 'report of a scan or radiograph',
        'medicine-list': 'list of medicines',
        insurance: 'insurance',
        'signed-form': 'signed form',
        other: 'something else',
        photograph: 'photograph',
        'not-said': 'cannot be told',
      },
    },
    says: { label: 'Words on it that may tell whose it is' },
  },
} as const satisfies FormWords
