import type { FormWords } from '#core/forms/words.ts'

const listened = { normal: 'normal', abnormal: 'not normal' } as const

export const anaestheticAssessment = {
  kind: 'anaesthetic-assessment',
  purpose: 'How fit the animal is for this anaesthetic, and the two ways to its airway.',
  sections: { airway: 'Mouth and airway', chest: 'Heart and lungs', status: 'ASA class' },
  fields: {
    jawOpens: {
      label: 'Does the jaw open?',
      help: 'An ear that is ill to the bulla can lock it. Awake and asleep may differ.',
      options: { yes: 'yes', limited: 'not fully', no: 'no' },
    },
    flatFace: { label: 'Flat face' },
    regurgitation: {
      label: 'Food coming up again',
      options: { usual: 'no more likely than usual', raised: 'more likely than usual' },
    },
    airwayA: { label: 'Airway, plan A', help: 'Tube, blade, who holds the head.' },
    airwayB: { label: 'Airway, plan B', help: 'What is done when plan A fails, and where it lies ready.' },
    heart: { label: 'Heart', options: listened },
    lungs: { label: 'Lungs', options: listened },
    heartAndLungs: { label: 'Heart and lungs in words', help: 'Murmur, rhythm, noise, what was done about it.' },
    asa: {
      label: 'ASA class',
      help: 'I healthy, II mild and under control, III moderate, such as nerve signs, IV a constant threat to life, V not expected to live a day.',
      options: { I: 'I', II: 'II', III: 'III', IV: 'IV', V: 'V' },
    },
    emergency: { label: 'Emergency (E)' },
    because: { label: 'Why this class' },
    assessedBy: { label: 'Assessed by' },
  },
} as const satisfies FormWords
