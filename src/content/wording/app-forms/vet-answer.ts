import type { FormWords } from '#core/forms/words.ts'
import { vetLinksInEnglish } from '../app-vet-links.ts'

export const vetAnswer = {
  kind: 'vet-answer',
  purpose: 'What the referring practice answered. What was seen of an ear is a check of its own.',
  sections: { answer: 'Answer' },
  fields: {
    examinedBy: { label: 'Who examined', help: 'The name as it was typed or said.' },
    asked: { label: 'Asked for', options: vetLinksInEnglish.asks },
    looks: { label: 'What was seen', help: 'The checks that came with this answer.' },
    saysDied: {
      label: 'Says that the animal has died',
      help: 'This alone ends nothing: ring the practice, then write the death.',
    },
    text: { label: 'In words' },
  },
} as const satisfies FormWords
