import { study } from '#core/evidence/study.ts'

export const hardie2008 = study({
  id: 'hardie-2008',
  year: 2008,
  design: 'unknown',
  remark: 'Cases of 1998–2007, by canal ablation with lateral opening or by ventral opening.',
  seen: { where: 'abstract at avmi.net', known: 'read', strength: 'study', checked: '2026-11-25' },
  series: [
    {
      species: 'dog',
      procedure: 'cholesteatoma-surgery',
      unit: 'animal',
      animals: 19,
      touches: ['teca-lbo', 'ventral-bulla-osteotomy'],
      outcomes: [
        {
          outcome: 'cholesteatoma_persist_or_recur',
          events: 10,
          total: 19,
          basis: 'stated',
          confidence: 'high',
          remark:
            '9 of 19 had no further signs. More often when the mouth could not be opened, with neurological signs, or with loss of temporal bone.',
        },
      ],
    },
  ],
})
