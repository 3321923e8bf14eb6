import type { FormWords } from '#core/forms/words.ts'

export const ownerNote = {
  kind: 'owner-note',
  purpose: 'What the owner saw or asked from home, in the owner’s words.',
  sections: { note: 'What the owner wrote', asked: 'How it came' },
  fields: {
    text: { label: 'In the owner’s words', none: 'only pictures' },
    seen: { label: 'When the owner saw it', open: 'Say when it was seen', none: 'not said' },
    'seen.day': { label: 'On the day' },
    'seen.time': { label: 'At' },
    ear: { label: 'Which ear', none: 'not said', options: { LEFT: 'LEFT', RIGHT: 'RIGHT', 'not-sure': 'not sure' } },
    language: {
      label: 'Language',
      help: 'As a tag, for example en.',
      wrong: 'Write the language as a tag, for example en or pt-BR.',
    },
    keptSince: { label: 'Waited on the owner’s phone since' },
  },
} as const satisfies FormWords
