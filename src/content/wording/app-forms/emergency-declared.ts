import type { FormWords } from '#core/forms/words.ts'

export const emergencyDeclared = {
  kind: 'emergency-declared',
  purpose:
    'Lifts blocks of planned doses for a few hours. Doubts about unit, strength, animal or drug stay. A second name is owed within a day.',
  sections: { emergency: 'Declared emergency' },
  fields: {
    because: { label: 'Why it is an emergency', help: 'Your reason now; somebody else signs later.' },
    lifts: {
      label: 'What it is to lift',
      help: 'The drugs whose blocks it lifts, by name, such as lidocaine; or NSAID for the class. Empty: every block.',
    },
  },
} as const satisfies FormWords
