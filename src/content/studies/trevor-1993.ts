import { study } from '#core/evidence/study.ts'

export const trevor1993 = study({
  id: 'trevor-1993',
  year: 1993,
  doi: '10.2460/javma.1993.202.01.123',
  design: 'unknown',
  seen: { where: 'abstract at avmajournals.avma.org', known: 'read', strength: 'study', checked: '2026-11-25' },
  series: [
    {
      species: 'cat',
      procedure: 'teca-lbo-and-vbo',
      unit: 'animal',
      animals: 19,
      touches: ['ventral-bulla-osteotomy', 'teca-lbo'],
      pool: { use: 'sensitivity', because: 'mixed-procedures' },
      followed: 'the time directly after surgery',
      remark: '18 openings from below and 4 from the side with canal ablation, not split; called short-term.',
      outcomes: [
        { outcome: 'horner_any', events: 11, total: 19, basis: 'stated', confidence: 'high' },
        { outcome: 'facial_nerve_deficit_any', events: 5, total: 19, basis: 'stated', confidence: 'high' },
        {
          outcome: 'vestibular_any',
          events: 2,
          total: 19,
          basis: 'stated',
          confidence: 'high',
          remark: 'Inner-ear inflammation.',
        },
      ],
    },
  ],
})
