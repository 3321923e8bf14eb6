import type { Otis3CutOffs } from '#core/workup/otis3.ts'

const read = {
  sources: ['nuttall-bensignor-2014'],
  where: 'abstract, results: 55 healthy dogs, 60 dogs with otitis externa; a pilot study',
  known: 'read',
  strength: 'study',
  confidence: 'high',
  checked: '2026-11-25',
} as const

/** The two lines of the pilot study. Its authors ask for validation by more clinicians; there is none for cats. */
export const otis3CutOffs: Otis3CutOffs = {
  affected: {
    ...read,
    value: { species: 'dog', total: 4, side: 'at-least', sensitivity: 0.911, specificity: 1 },
  },
  success: {
    ...read,
    value: { species: 'dog', total: 3, side: 'at-most', sensitivity: 1, specificity: 0.919 },
  },
}
