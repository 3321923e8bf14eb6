import type { FormWords } from '#core/forms/words.ts'

export const baseline = {
  kind: 'baseline',
  purpose: 'Face, eye and balance before any sedative. It decides later whether a weak face is disease or damage.',
  sections: { before: 'Before any sedative', face: 'Face and eye', balance: 'Balance, throat, hearing' },
  fields: {
    beforeSedation: { label: 'Was this looked at before any sedative?' },
    drugsOnBoard: { label: 'Drugs on board', help: 'One on each line.', none: 'none' },
    side: { label: 'Face and eye' },
    'side.blink': { label: 'Blink', options: { normal: 'normal', weak: 'weak', absent: 'absent' } },
    'side.lipOrEarDroop': { label: 'Lip or ear droops' },
    'side.nostril': { label: 'Nostril', options: { moist: 'moist', dry: 'dry' } },
    'side.pupil': { label: 'Pupil', options: { normal: 'normal', small: 'small', large: 'large' } },
    'side.thirdEyelidUp': { label: 'Third eyelid up' },
    'side.tearTest': { label: 'Tear test', help: 'Schirmer strip, millimetres in one minute.', none: 'not done' },
    'side.fluorescein': {
      label: 'Fluorescein on the cornea',
      options: { negative: 'no stain', positive: 'stain: ulcer' },
    },
    headTilt: { label: 'Head tilt', options: { none: 'none', left: 'to the LEFT', right: 'to the RIGHT' } },
    nystagmus: { label: 'Eyes beat from side to side (nystagmus)' },
    unsteady: { label: 'Unsteady gait' },
    gag: { label: 'Gag reflex', options: { present: 'present', weak: 'weak', absent: 'absent' } },
    hears: { label: 'Reacts to sound' },
  },
} as const satisfies FormWords
