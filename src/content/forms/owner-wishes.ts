import type { FormArrangement } from '#core/forms/arrangement.ts'

/** What the owner says matters; mostly sent from the owner's page, or told on the telephone. */
export const ownerWishes = {
  kind: 'owner-wishes',
  place: 'case',
  chapters: ['Choice'],
  writtenBy: ['nurse', 'desk'],
  amendable: false,
  sections: [
    { id: 'wishes', fields: ['leaning', 'matters', 'questions'] },
    { id: 'asked', fields: ['edition', 'language'] },
  ],
} as const satisfies FormArrangement
