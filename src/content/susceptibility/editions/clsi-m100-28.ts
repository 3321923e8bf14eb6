import { edition, mic } from '#core/culture/edition.ts'
import { schleiferi } from '../known.ts'

/** Two rows only, as a study of 2018 quotes them; nothing else of this edition was read. */
export const clsiM10028 = edition({
  id: 'clsi-m100-28',
  standard: 'CLSI M100',
  edition: 'ed28',
  year: 2018,
  convention: 'CLSI',
  audience: 'people',
  current: false,
  groups: [
    {
      kind: 'human',
      host: 'human',
      agent: 'oxacillin',
      sites: ['any'],
      known: schleiferi,
      rows: [
        mic('staphylococcus-coagulans', '<=0.25', '', '>=0.5', {
          remark: 'named S. schleiferi in the source; same cut-off as S. pseudintermedius; later sets list 0.5 and 1',
        }),
        mic('staphylococcus-schleiferi', '<=0.25', '', '>=0.5', {
          remark:
            'same cut-off as S. pseudintermedius; cefoxitin misses mecA in this species; later sets list 0.5 and 1',
        }),
      ],
    },
  ],
})
