import { editionBefore, mic, zone } from '#core/culture/edition.ts'
import { read } from '../known.ts'
import { clsiM10032 } from './clsi-m100-32.ts'

/** What was changed after 2021. */
export const clsiM10031 = editionBefore(clsiM10032, {
  id: 'clsi-m100-31',
  standard: 'CLSI M100',
  edition: 'ed31',
  year: 2021,
  convention: 'CLSI',
  audience: 'people',
  current: false,
  groups: [
    {
      kind: 'human',
      host: 'human',
      agent: 'piperacillin-tazobactam',
      sites: ['any'],
      since: 2020,
      known: read,
      rows: [
        zone('enterobacterales', '100/10 µg', '>=21', '18-20', '<=17'),
        mic('enterobacterales', '<=16', '32; 64', '>=128'),
      ],
    },
  ],
})
