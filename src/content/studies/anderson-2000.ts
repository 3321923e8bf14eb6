import { study } from '#core/evidence/study.ts'

export const anderson2000 = study({
  id: 'anderson-2000',
  year: 2000,
  design: 'unknown',
  seen: { where: 'abstract at veterinaryrecord.bmj.com', known: 'read', strength: 'study', checked: '2026-11-25' },
  series: [
    {
      species: 'cat',
      procedure: 'traction',
      unit: 'animal',
      animals: 22,
      followed: 'long-term; the months are not stated',
      outcomes: [
        {
          outcome: 'disease_recurrence_local',
          events: 9,
          total: 22,
          basis: 'stated',
          confidence: 'high',
          remark:
            '30 had traction, 22 were followed. None of those given prednisolone afterwards had it again; that count is not in the abstract.',
        },
      ],
    },
  ],
})
