import { study } from '#core/evidence/study.ts'

export const devitt1997 = study({
  id: 'devitt-1997',
  year: 1997,
  doi: '10.1111/j.1532-950x.1997.tb01486.x',
  design: 'retrospective',
  seen: { where: 'abstract at scilit.com', known: 'read', strength: 'study', checked: '2026-11-25' },
  series: [
    {
      species: 'dog',
      procedure: 'teca-lbo',
      unit: 'animal',
      animals: 59,
      outcomes: [
        {
          outcome: 'postop_complication_any',
          events: 26,
          total: 59,
          basis: 'stated',
          confidence: 'high',
          followed: 'the time directly after surgery',
          remark:
            'Facial palsy, swelling, balance signs, early loss of the drain, one death; no difference between drain and closure.',
        },
        {
          outcome: 'longterm_complication_any',
          events: 12,
          total: 50,
          basis: 'stated',
          confidence: 'high',
          followed: 'more than 6 months',
          remark: 'Skin disease of the flap, chronic fistula, lasting facial paralysis; not split in the abstract.',
        },
        {
          outcome: 'perioperative_death',
          events: 1,
          total: 59,
          basis: 'stated',
          confidence: 'high',
          followed: 'the time directly after surgery',
          remark: 'Aspiration pneumonia.',
        },
      ],
    },
  ],
})
