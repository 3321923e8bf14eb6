import type { FormWords } from '#core/forms/words.ts'
import { specimenWords } from '../report.ts'

export const specimen = {
  kind: 'specimen',
  purpose: 'What was taken, from where. It is owed until the owner has been told.',
  sections: { sample: 'The sample', way: 'On its way' },
  fields: {
    site: { label: 'Taken from', options: specimenWords.sites },
    tests: { label: 'Tests asked for', options: specimenWords.tests },
    label: { label: 'Label on the pot' },
    antibioticsOnBoard: { label: 'Antibiotics on board', help: 'Name and last dose.', none: 'none' },
    laboratory: { label: 'Laboratory', none: 'read in the house' },
    expectedBy: { label: 'Result expected', help: 'The day the laboratory named. Leave empty when it named none.' },
    operation: { label: 'Taken during', none: 'no operation' },
  },
} as const satisfies FormWords
