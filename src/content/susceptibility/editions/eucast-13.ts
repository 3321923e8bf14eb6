import { editionBefore, mic, zone } from '#core/culture/edition.ts'
import { read } from '../known.ts'
import { eucast14 } from './eucast-14.ts'

/** What was changed after 2023. */
export const eucast13 = editionBefore(eucast14, {
  id: 'eucast-13',
  standard: 'EUCAST',
  edition: 'v13.0',
  year: 2023,
  convention: 'EUCAST',
  audience: 'people',
  current: false,
  groups: [
    {
      kind: 'human',
      host: 'human',
      agent: 'benzylpenicillin',
      sites: ['any'],
      known: read,
      rows: [zone('corynebacterium', '1 unit', '>=29', '', '<29'), mic('corynebacterium', '<=0.125', '', '>0.125')],
    },
    {
      kind: 'human',
      host: 'human',
      agent: 'ciprofloxacin',
      sites: ['any'],
      since: 2022,
      remark: 'the S end lies off the scale on purpose: every wild-type isolate is I, which works with the high dose',
      known: read,
      rows: [
        zone('coagulase-negative-staphylococcus', '5 µg', '>=50', '24-49', '<24'),
        mic('coagulase-negative-staphylococcus', '<=0.001', '0.002-1', '>1'),
        zone('staphylococcus-aureus', '5 µg', '>=50', '21-49', '<21'),
        mic('staphylococcus-aureus', '<=0.001', '0.002-1', '>1'),
      ],
    },
  ],
})
