import type { FormArrangement } from '#core/forms/arrangement.ts'

/** One ear, as it is felt and seen; the other ear stands beside it. */
export const earFindings = {
  kind: 'ear-findings',
  place: 'case',
  chapters: ['Work-up'],
  writtenBy: ['surgeon'],
  amendable: true,
  sections: [
    { id: 'look', fields: ['examined', 'flapCarriage'] },
    { id: 'feel', fields: ['canalFeel', 'painOnPressing', 'painOnJawOpening', 'swelling', 'drainingTract'] },
    { id: 'see', fields: ['discharge', 'stenosis', 'drum', 'mass', 'massPlace', 'massSize'] },
    { id: 'otis-3', fields: ['otis3.erythema', 'otis3.swelling', 'otis3.erosion', 'otis3.exudate'], running: 'otis-3' },
    { id: 'words', fields: ['text'] },
  ],
  fields: {
    'otis3.erythema': { blank: 'not-assessed' },
    'otis3.swelling': { blank: 'not-assessed' },
    'otis3.erosion': { blank: 'not-assessed' },
    'otis3.exudate': { blank: 'not-assessed' },
    massPlace: { control: 'choice', shownWhen: { field: 'mass', is: ['yes'] }, otherwise: 'not-assessed' },
    massSize: { shownWhen: { field: 'mass', is: ['yes'] }, otherwise: 'not-assessed' },
  },
} as const satisfies FormArrangement
