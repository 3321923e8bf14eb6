import type { FormWords } from '#core/forms/words.ts'
import { trayInEnglish } from '../app-tray.ts'

export const arrivedPaper = {
  kind: 'arrived-paper',
  purpose: 'A paper or picture that came in. It waits until a person files it to animal, ear and side.',
  sections: { arrival: 'What came in' },
  fields: {
    came: { label: 'Came by', options: trayInEnglish.came },
    from: { label: 'From', help: 'As they gave themselves: a name, a practice, a number.' },
    seems: { label: 'It looks like', options: trayInEnglish.seems },
    says: { label: 'Words on it that may tell whose it is' },
  },
} as const satisfies FormWords
