import { study } from '#core/evidence/study.ts'

export const sharp1990 = study({
  id: 'sharp-1990',
  year: 1990,
  design: 'unknown',
  seen: { where: 'abstract and introduction at docksci.com', known: 'read', strength: 'study', checked: '2026-11-25' },
  series: [
    {
      species: 'dog',
      procedure: 'teca-vbo',
      unit: 'animal',
      animals: 13,
      followed: 'called long-term; the months are not stated',
      outcomes: [
        {
          outcome: 'facial_nerve_deficit_any',
          events: 4,
          total: 13,
          basis: 'stated',
          confidence: 'high',
          remark: '31 % of 13 dogs (14 ears); called paralysis, duration not given.',
        },
        {
          outcome: 'deep_recurrence',
          events: 2,
          total: 13,
          basis: 'stated',
          confidence: 'high',
          remark:
            'Both tied to canal lining left behind; one cured by a second operation, one put to sleep after three.',
        },
        {
          outcome: 'resolution_or_improved',
          events: 11,
          total: 13,
          basis: 'stated',
          confidence: 'high',
          remark: 'After the first operation; 12 of 13 with the second.',
        },
        {
          outcome: 'postop_complication_any',
          events: 5,
          total: 13,
          basis: 'derived',
          confidence: 'medium',
          remark: '8 of 13 had no complication.',
        },
      ],
    },
  ],
})
