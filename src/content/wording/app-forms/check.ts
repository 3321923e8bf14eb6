import type { FormWords } from '#core/forms/words.ts'

export const check = {
  kind: 'check',
  purpose: 'Wound, face, eye and balance of an operated ear at one look. The same form each time.',
  sections: {
    look: 'Seen by',
    wound: 'Wound',
    face: 'Face',
    eye: 'Eye',
    balance: 'Balance',
    throat: 'Throat and hearing',
    words: 'Anything else',
  },
  normal: { balance: 'Balance looked at: no tilt, eyes still, walks steadily' },
  fields: {
    seenBy: {
      label: 'Seen by',
      options: {
        us: 'us',
        'referring-vet': 'referring vet',
        'owner-photograph': 'photograph by the owner',
        'owner-words': 'the owner’s words',
      },
    },
    wound: {
      label: 'Wound',
      options: {
        closed: 'closed',
        gap: 'gap',
        seroma: 'seroma',
        infected: 'infected',
        'pinna-edge': 'edge of the flap dies',
      },
    },
    woundNeeded: {
      label: 'What did the wound need?',
      help: 'The grade is worked out from this.',
      options: {
        nothing: 'nothing',
        dressing: 'dressing',
        drug: 'drug',
        'drainage-awake': 'drainage, awake',
        operation: 'operation',
      },
    },
    sutures: { label: 'Stitches', options: { in: 'in', out: 'out', none: 'none' } },
    painful: { label: 'Painful' },
    blink: { label: 'Blink', options: { normal: 'normal', weak: 'weak', absent: 'absent' } },
    lipOrEarDroop: { label: 'Lip or ear droops' },
    possibleBlockEffect: {
      label: 'Could a local block still be at work?',
      help: 'If so, a missing blink is not graded as a palsy. The eye is lubricated anyway.',
    },
    nostril: { label: 'Nostril on this side', options: { moist: 'moist', dry: 'dry' } },
    horner: { label: 'Horner’s syndrome', help: 'A small pupil, the third eyelid up.' },
    headTilt: { label: 'Head tilt' },
    nystagmus: { label: 'Eyes beat from side to side (nystagmus)' },
    unsteady: { label: 'Unsteady gait' },
    gag: { label: 'Gag reflex', options: { present: 'present', weak: 'weak', absent: 'absent' } },
    hears: { label: 'Reacts to sound' },
    tearTest: { label: 'Tear test', help: 'Schirmer strip, millimetres in one minute.', none: 'not done' },
    fluorescein: { label: 'Fluorescein on the cornea', options: { negative: 'no stain', positive: 'stain: ulcer' } },
    text: { label: 'Anything else' },
  },
} as const satisfies FormWords
