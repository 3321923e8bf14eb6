import { editionBefore } from '#core/culture/edition.ts'
import { clsiM10035 } from './clsi-m100-35.ts'

/** Nothing of its own: what of the thirty-fifth edition stood in it already. */
export const clsiM10034 = editionBefore(clsiM10035, {
  id: 'clsi-m100-34',
  standard: 'CLSI M100',
  edition: 'ed34',
  year: 2024,
  convention: 'CLSI',
  audience: 'people',
  current: false,
  groups: [],
})
