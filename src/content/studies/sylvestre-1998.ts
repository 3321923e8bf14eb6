import { study } from '#core/evidence/study.ts'

export const sylvestre1998 = study({
  id: 'sylvestre-1998',
  year: 1998,
  design: 'unknown',
  seen: {
    where: 'second-hand: an unnamed study quoted at vet360.vetlink.co.za',
    known: 'read',
    strength: 'study',
    checked: '2026-11-25',
  },
  series: [
    {
      species: 'dog',
      procedure: 'lateral-wall-resection',
      unit: 'animal',
      outcomes: [
        {
          outcome: 'resolution_or_improved',
          percent: '45 % overall, better in Shar Pei, very poor in spaniels',
          basis: 'percent-only',
          confidence: 'low',
          pool: { use: 'no', because: 'percent-only' },
          remark:
            'Also remembered: about 86.5 % unacceptable in Cocker Spaniels, about 63 % acceptable in other breeds.',
        },
      ],
    },
  ],
})
