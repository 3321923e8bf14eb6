import { edition, mic } from '#core/culture/edition.ts'
import { derivedFromPapich, labelLimit } from '../known.ts'

/** Feline fluoroquinolones, proposed and not adopted: information, never a category. */
export const proposalPapich2025 = edition({
  id: 'proposal-papich-2025',
  standard: 'Proposal Papich',
  edition: 'not adopted',
  year: 2025,
  convention: 'CLSI',
  audience: 'animals',
  current: false,
  groups: [
    {
      kind: 'proposal',
      host: 'cat',
      agent: 'enrofloxacin',
      sites: ['soft-tissue'],
      dose: { value: '5 mg/kg every 24 h (a cat never more)', ...labelLimit },
      known: derivedFromPapich,
      rows: [
        mic('enterobacterales', '<=0.12', '', '', { remark: 'two dilutions below the value in force; not adopted' }),
        mic('pasteurella-multocida', '', '', '', { remark: 'no value in force to derive a number from' }),
        mic('pseudomonas-aeruginosa', '<=0.12', '', '', {
          remark: 'two dilutions below the value in force; not adopted',
        }),
        mic('staphylococcus', '<=0.12', '', '', { remark: 'two dilutions below the value in force; not adopted' }),
      ],
    },
    {
      kind: 'proposal',
      host: 'cat',
      agent: 'marbofloxacin',
      sites: ['soft-tissue'],
      known: derivedFromPapich,
      rows: [
        mic('enterobacterales', '<=0.25', '', '', {
          remark: 'two dilutions below the value in force; not adopted; an SDD category is proposed too',
        }),
        mic('pasteurella-multocida', '', '', '', {
          remark: 'no value in force to derive a number from; an SDD category is proposed too',
        }),
        mic('pseudomonas-aeruginosa', '', '', '', {
          remark: 'no value in force to derive a number from; an SDD category is proposed too',
        }),
        mic('staphylococcus', '<=0.25', '', '', {
          remark: 'two dilutions below the value in force; not adopted; an SDD category is proposed too',
        }),
      ],
    },
  ],
})
