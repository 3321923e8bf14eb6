import type { FormWords } from '#core/forms/words.ts'
import { signOutPointNames } from '../sign-out-points.ts'

export const incidentNote = {
  kind: 'incident-note',
  purpose: 'A near miss or an incident, so that it becomes less likely. Nobody is asked whose fault it was.',
  sections: { happened: 'What happened', learnt: 'What helped, what could change', belongs: 'What it belongs to' },
  fields: {
    what: {
      label: 'What was it about?',
      options: {
        side: 'the side',
        identity: 'which animal',
        'drug-or-dose': 'drug or dose',
        'count-or-pack': 'count or throat pack',
        specimen: 'a specimen',
        'airway-or-anaesthesia': 'airway or anaesthesia',
        bleeding: 'bleeding',
        equipment: 'equipment',
        'burn-or-pressure': 'burn or pressure',
        handover: 'handing over',
        other: 'something else',
      },
    },
    during: {
      label: 'Where in the course?',
      none: 'not said',
      options: {
        'before-anaesthesia': 'before anaesthesia',
        induction: 'induction',
        operation: 'operation',
        closing: 'closing',
        recovery: 'recovery',
        ward: 'ward',
        'going-home': 'going home',
      },
    },
    reached: {
      label: 'Did it reach the animal?',
      none: 'not said',
      options: { no: 'no', 'yes-no-harm': 'yes, without harm', 'yes-harm': 'yes, with harm', unknown: 'not known' },
    },
    helped: {
      label: 'What helped?',
      options: {
        'spoken-pause': 'a spoken pause',
        'somebody-spoke': 'somebody spoke up',
        'second-check': 'a second check',
        count: 'a count',
        monitor: 'the monitor',
        drill: 'the drill was known',
        luck: 'luck',
      },
    },
    change: {
      label: 'What could be changed?',
      options: {
        equipment: 'equipment',
        labels: 'labels',
        'list-or-pause': 'list or pause',
        teaching: 'teaching',
        hands: 'more hands or time',
        handover: 'handing over',
        nothing: 'nothing',
      },
    },
    text: { label: 'In one line' },
    emergency: { label: 'Emergency it belongs to', none: 'none' },
    point: { label: 'Point of the sign-out it explains', none: 'none', options: signOutPointNames },
    pointOf: { label: 'Of which pot or count' },
  },
} as const satisfies FormWords
