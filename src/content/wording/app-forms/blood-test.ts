import type { FormWords } from '#core/forms/words.ts'

export const bloodTest = {
  kind: 'blood-test',
  purpose: 'Blood that was measured, line by line as printed.',
  sections: { sample: 'The sample', results: 'The results', words: 'Anything else' },
  fields: {
    panel: {
      label: 'What was asked',
      options: { haematology: 'blood cells', chemistry: 'chemistry', clotting: 'clotting', other: 'something else' },
    },
    measured: { label: 'Measured', options: { 'in-house': 'in the house', laboratory: 'by a laboratory' } },
    laboratory: { label: 'Laboratory', none: 'not named' },
    results: { label: 'Results', add: 'Add a line', item: 'Line {number}' },
    'results.analyte': { label: 'What was measured', help: 'As printed, for example PCV.' },
    'results.printed': { label: 'Result, as printed', help: 'Number or words, with its sign: 44, <0.5, clumped.' },
    'results.unit': { label: 'Unit, as printed', help: 'It is never converted.' },
    'results.flag': { label: 'Flag, as printed', help: 'For example H or L. Leave empty when there is none.' },
    'results.range': { label: 'Range, as printed', help: 'Of this machine or laboratory.' },
    text: { label: 'Anything else', help: 'A clotted sample, a fat one, drugs on board.' },
  },
} as const satisfies FormWords
