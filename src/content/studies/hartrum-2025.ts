import { study } from '#core/evidence/study.ts'

export const hartrum2025 = study({
  id: 'hartrum-2025',
  year: 2025,
  doi: '10.2460/javma.24.08.0533',
  design: 'prospective',
  remark: 'Two hospitals in Ohio.',
  seen: {
    where: 'abstract at avmajournals.avma.org and a copy of PubMed 39793190',
    known: 'read',
    strength: 'study',
    checked: '2026-11-25',
  },
  series: [
    {
      species: 'mixed',
      procedure: 'teca-lbo-and-vbo',
      unit: 'procedure',
      animals: 50,
      touches: ['teca-lbo', 'ventral-bulla-osteotomy'],
      pool: { use: 'no', because: 'mixed-species' },
      outcomes: [
        {
          outcome: 'facial_nerve_deficit_any',
          events: 25,
          total: 53,
          basis: 'reconstructed',
          confidence: 'medium',
          followed: 'day 1',
          remark:
            '28 dogs and 22 cats, 63 ears. The base of 53 operations was inferred: it alone reproduces every printed percentage. 3 of 53 had it before surgery.',
        },
        {
          outcome: 'horner_any',
          events: 24,
          total: 53,
          basis: 'reconstructed',
          confidence: 'medium',
          followed: 'day 1',
          remark:
            '28 dogs and 22 cats, 63 ears. The base of 53 operations was inferred: it alone reproduces every printed percentage. 6 of 53 had it before surgery.',
        },
        {
          outcome: 'corneal_ulcer',
          events: 9,
          total: 53,
          basis: 'reconstructed',
          confidence: 'medium',
          followed: 'day 1',
          remark:
            '28 dogs and 22 cats, 63 ears. The base of 53 operations was inferred: it alone reproduces every printed percentage. 2 of 53 had it before surgery.',
        },
        {
          outcome: 'ocular_or_neuro_ophthalmic_any',
          events: 34,
          total: 53,
          basis: 'reconstructed',
          confidence: 'medium',
          followed: 'up to about 2 months',
          remark:
            '28 dogs and 22 cats, 63 ears. The base of 53 operations was inferred: it alone reproduces every printed percentage.',
        },
        {
          outcome: 'facial_nerve_deficit_persisting_2mo',
          events: 5,
          total: 17,
          basis: 'stated',
          confidence: 'high',
          followed: 'about 2 months',
          remark: 'Of those examined again, probably those with an earlier deficit.',
        },
        {
          outcome: 'horner_persisting_2mo',
          events: 5,
          total: 14,
          basis: 'stated',
          confidence: 'high',
          followed: 'about 2 months',
          remark: 'Of those examined again, probably those with an earlier deficit.',
        },
      ],
    },
  ],
})
