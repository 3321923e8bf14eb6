import { editionBefore, mic } from '#core/culture/edition.ts'
import { read } from '../known.ts'
import { clsiVet01s5 } from './clsi-vet01s-5.ts'

/** The document before VET01S. */
export const clsiVet084 = editionBefore(clsiVet01s5, {
  id: 'clsi-vet08-4',
  standard: 'CLSI VET08',
  edition: 'ed4',
  year: 2018,
  convention: 'CLSI',
  audience: 'animals',
  current: false,
  groups: [
    {
      kind: 'clinical',
      host: 'cat',
      agent: 'amoxicillin-clavulanate',
      sites: ['soft-tissue', 'urinary'],
      known: read,
      rows: [mic('escherichia-coli', '<=0.25', '0.5', '>=1')],
    },
  ],
})
