import type { FormArrangement } from '#core/forms/arrangement.ts'

/** What was measured at one moment. */
export const observation = {
  kind: 'observation',
  place: 'case',
  chapters: ['Theatre', 'Ward'],
  writtenBy: ['anaesthetist', 'nurse'],
  amendable: true,
  sections: [
    { id: 'where', fields: ['where', 'first', 'side'] },
    { id: 'values', fields: ['values', 'unmeasured'] },
    { id: 'pain', fields: ['pain'] },
    { id: 'words', fields: ['text'] },
  ],
  fields: {
    side: { shownWhen: { field: 'first', is: ['blink'] } },
    'values.value': {
      unitBy: {
        field: 'what',
        units: {
          'heart-rate': '/min',
          'respiratory-rate': '/min',
          'oxygen-saturation': '%',
          'end-tidal-co2': 'mm[Hg]',
          systolic: 'mm[Hg]',
          mean: 'mm[Hg]',
          diastolic: 'mm[Hg]',
          temperature: 'Cel',
          vapour: '%{vol}',
          fluids: 'mL/h',
        },
      },
    },
    'values.artefact': { control: 'tick' },
  },
} as const satisfies FormArrangement
