import type { NoCutOff, Otis3Refusal, Otis3Sign } from '#core/workup/otis3.ts'

export const otis3RefusalsInEnglish = {
  'sign-not-assessed': 'No OTIS-3 total: {signs} not assessed. Look again, or leave the total unknown.',
  'sign-out-of-range': 'OTIS-3 grades each sign with a whole number from 0 to 3; {sign} cannot be {value}.',
  'no-cut-off-for-species': 'The OTIS-3 lines were drawn in dogs; no line was found for a {species}.',
} as const satisfies Record<Otis3Refusal['because'] | NoCutOff['because'], string>

export const otis3SignsInEnglish = {
  erythema: 'redness',
  swelling: 'swelling',
  erosion: 'erosion or ulcers',
  exudate: 'exudate',
} as const satisfies Record<Otis3Sign, string>
