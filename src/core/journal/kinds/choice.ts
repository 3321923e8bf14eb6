import { z } from 'zod'
import { text } from '../answers.ts'
import { defineKind } from '../kind.ts'

export const optionIds = [
  'medical-control',
  'deep-flush',
  'lateral-wall-resection',
  'vertical-canal-ablation',
  'teca-lbo',
  'subtotal-ablation',
  'ventral-bulla-osteotomy',
  'traction',
  'no-treatment',
  'euthanasia',
] as const

/** What was offered for this ear, what was chosen or refused and why, and what is still missing. */
export const choice = defineKind({
  name: 'choice',
  version: 1,
  subjects: ['ear'],
  body: z.strictObject({
    options: z
      .array(
        z.strictObject({ option: z.enum(optionIds), answer: z.enum(['chosen', 'declined', 'open']), because: text }),
      )
      .min(1),
    session: z.enum(['one-ear', 'both-in-one-session', 'staged', 'not-decided']),
    for: z.array(text),
    against: z.array(text),
    missing: z.array(text),
  }),
  example: {
    options: [
      { option: 'teca-lbo', answer: 'chosen', because: 'Canal closed and mineral; two years of treatment failed.' },
      {
        option: 'medical-control',
        answer: 'declined',
        because: 'Tried for two years; the ear cannot be reached any more.',
      },
    ],
    session: 'one-ear',
    for: ['Irreversible narrowing', 'Filled bulla'],
    against: ['Skin disease goes on whatever is done to the ear'],
    missing: [],
  },
})
