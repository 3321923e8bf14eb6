import type { FormWords } from '#core/forms/words.ts'
import { routeWords } from '../app-form-words.ts'
import { howFields } from '../app-how-fields.ts'
import { doseSheetWords } from '../papers-dose.ts'

export const usualPlan = {
  kind: 'usual-plan',
  purpose: 'A named dose plan of the house; each line carries one chosen dose with its reason.',
  sections: { plan: 'Plan', lines: 'Lines' },
  fields: {
    plan: { label: 'Name of the plan' },
    species: { label: 'Species', options: { dog: 'dog', cat: 'cat' } },
    lines: { label: 'Lines', add: 'Add a line', item: 'Line {number}' },
    'lines.line': { label: 'Name of the line', help: 'Short, for example block.' },
    'lines.drug': { label: 'Drug' },
    'lines.use': { label: 'Purpose', options: doseSheetWords.uses },
    'lines.route': { label: 'Route', options: routeWords },
    'lines.qualifier': { label: 'Bracket of the formulary row', help: 'When the row has one.' },
    'lines.dose': { label: 'Dose', help: 'With its unit, for example 1 mg/kg. One dose, never a range.' },
    'lines.shelfItem': { label: 'Product on the shelf', none: 'not settled' },
    'lines.because': { label: 'Why this dose' },
  },
  groups: { 'lines.how': howFields },
} as const satisfies FormWords
