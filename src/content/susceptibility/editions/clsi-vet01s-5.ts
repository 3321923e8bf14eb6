import { editionBefore } from '#core/culture/edition.ts'
import { clsiVet01s6 } from './clsi-vet01s-6.ts'

/** Nothing of its own: what of the sixth edition stood in it already. */
export const clsiVet01s5 = editionBefore(clsiVet01s6, {
  id: 'clsi-vet01s-5',
  standard: 'CLSI VET01S',
  edition: 'ed5',
  year: 2020,
  convention: 'CLSI',
  audience: 'animals',
  current: false,
  groups: [],
})
