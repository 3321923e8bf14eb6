import { study } from '#core/evidence/study.ts'

export const greci2011 = study({
  id: 'greci-2011',
  year: 2011,
  design: 'unknown',
  seen: {
    where: 'second-hand: a citing statement at scite.ai',
    known: 'read',
    strength: 'study',
    checked: '2026-11-25',
  },
  series: [
    {
      species: 'dog',
      procedure: 'cholesteatoma-surgery',
      unit: 'animal',
      animals: 11,
      touches: ['teca-lbo', 'ventral-bulla-osteotomy'],
      outcomes: [
        {
          outcome: 'facial_nerve_deficit_any',
          events: 2,
          total: 11,
          basis: 'stated',
          confidence: 'low',
          pool: { use: 'sensitivity', because: 'second-hand' },
          remark: 'Facial palsy with a dry nostril; quoted as 18.2 %.',
        },
      ],
    },
  ],
})
