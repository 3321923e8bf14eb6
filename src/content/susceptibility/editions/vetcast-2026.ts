import { edition, mic } from '#core/culture/edition.ts'
import { vetcastState } from '../known.ts'

/** Nothing for dogs or cats had been published. */
export const vetcast2026 = edition({
  id: 'vetcast-2026',
  standard: 'VetCAST',
  edition: 'no table yet',
  year: 2026,
  convention: 'EUCAST',
  audience: 'animals',
  current: true,
  groups: [
    {
      kind: 'none',
      host: 'dog',
      agent: 'any',
      sites: ['any'],
      remark: 'a table with dogs was in preparation in mid-2026; only florfenicol in cattle was published',
      known: vetcastState,
      rows: [mic('any', '', '', '')],
    },
  ],
})
