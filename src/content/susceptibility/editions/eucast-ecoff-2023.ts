import { edition, mic } from '#core/culture/edition.ts'
import { wildTypeTables } from '../known.ts'

/** One older wild-type limit. Not a value to read S or R from. */
export const eucastEcoff2023 = edition({
  id: 'eucast-ecoff-2023',
  standard: 'EUCAST ECOFF',
  edition: 'download of 13 October',
  year: 2023,
  convention: 'EUCAST',
  audience: 'animals',
  current: false,
  groups: [
    {
      kind: 'wild-type-limit',
      host: 'any',
      agent: 'amoxicillin-clavulanate',
      sites: ['any'],
      remark: 'lies inside the clinical S range',
      known: wildTypeTables,
      rows: [mic('staphylococcus-pseudintermedius', '<=0.03', '', '>0.03')],
    },
  ],
})
