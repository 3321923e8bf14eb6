import { editionBefore, mic, zone } from '#core/culture/edition.ts'
import { read } from '../known.ts'
import { clsiM10034 } from './clsi-m100-34.ts'

/** What was changed after 2023. */
export const clsiM10033 = editionBefore(clsiM10034, {
  id: 'clsi-m100-33',
  standard: 'CLSI M100',
  edition: 'ed33',
  year: 2023,
  convention: 'CLSI',
  audience: 'people',
  current: false,
  groups: [
    {
      kind: 'human',
      host: 'human',
      agent: 'gentamicin',
      sites: ['any'],
      since: 2020,
      known: read,
      rows: [
        zone('pseudomonas-aeruginosa', '10 µg', '>=15', '13-14', '<=12'),
        mic('pseudomonas-aeruginosa', '<=4', '8', '>=16'),
      ],
    },
    {
      kind: 'human',
      host: 'human',
      agent: 'linezolid',
      sites: ['any'],
      since: 2020,
      known: read,
      rows: [zone('staphylococcus', '30 µg', '>=21', '', '<=20')],
    },
    {
      kind: 'human',
      host: 'human',
      agent: 'oxacillin',
      sites: ['any'],
      since: 2021,
      known: read,
      rows: [
        mic('staphylococcus-epidermidis', '<=0.5', '', '>=1'),
        mic('staphylococcus-pseudintermedius', '<=0.5', '', '>=1', {
          remark: 'the sources disagree: the veterinary document of 2023 keeps 0.25 and 0.5; the stricter one is used',
        }),
        mic('staphylococcus-schleiferi', '<=0.5', '', '>=1'),
      ],
    },
    {
      kind: 'human',
      host: 'human',
      agent: 'polymyxin-b',
      sites: ['any'],
      since: 2020,
      known: read,
      rows: [mic('pseudomonas-aeruginosa', '', '<=4', '>=8')],
    },
  ],
})
