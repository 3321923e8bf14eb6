import { editionBefore, mic } from '#core/culture/edition.ts'
import { read } from '../known.ts'
import { clsiM10031 } from './clsi-m100-31.ts'

/** What was changed after 2020. */
export const clsiM10030 = editionBefore(clsiM10031, {
  id: 'clsi-m100-30',
  standard: 'CLSI M100',
  edition: 'ed30',
  year: 2020,
  convention: 'CLSI',
  audience: 'people',
  current: false,
  groups: [
    {
      kind: 'human',
      host: 'human',
      agent: 'oxacillin',
      sites: ['any'],
      known: read,
      rows: [
        mic('staphylococcus', '<=0.25', '', '>=0.5', {
          remark:
            'staphylococci other than S. aureus and S. lugdunensis; S. pseudintermedius among them from the set of 2021 on',
        }),
        mic('staphylococcus-epidermidis', '<=0.25', '', '>=0.5'),
        mic('staphylococcus-pseudintermedius', '<=0.25', '', '>=0.5'),
        mic('staphylococcus-schleiferi', '<=0.25', '', '>=0.5'),
      ],
    },
  ],
})
