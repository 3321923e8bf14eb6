import { study } from '#core/evidence/study.ts'

export const marino1993 = study({
  id: 'marino-1993',
  year: 1993,
  design: 'unknown',
  seen: {
    where: 'second-hand: a page on canine ear tumours at vsso.org',
    known: 'read',
    strength: 'study',
    checked: '2026-11-25',
  },
  series: [
    {
      species: 'dog',
      procedure: 'lateral-resection-for-tumour',
      unit: 'animal',
      touches: ['teca-lbo', 'lateral-wall-resection'],
      outcomes: [
        {
          outcome: 'tumour_local_recurrence',
          percent: '75 % after lateral resection, 0 % after ablation with bulla opening',
          basis: 'percent-only',
          confidence: 'low',
          pool: { use: 'no', because: 'percent-only' },
          remark: 'Median survival 9 against 36 months. The counts are not on the page.',
        },
      ],
    },
  ],
})
