import { study } from '#core/evidence/study.ts'

export const smallCanalMasses2016 = study({
  id: 'small-canal-masses-2016',
  year: 2016,
  design: 'unknown',
  seen: { where: 'abstract at jstage.jst.go.jp', known: 'read', strength: 'study', checked: '2026-11-25' },
  series: [
    {
      species: 'dog',
      procedure: 'lateral-resection-or-excision',
      unit: 'animal',
      animals: 19,
      touches: ['lateral-wall-resection'],
      outcomes: [
        {
          outcome: 'tumour_local_recurrence',
          events: 1,
          total: 19,
          basis: 'stated',
          confidence: 'high',
          remark:
            '12 of 17 were benign; the one that came back, after 1.5 months, was an adenocarcinoma of the horizontal canal.',
        },
      ],
    },
  ],
})
