import type { FormWords } from '#core/forms/words.ts'
import { routeWords } from '../app-form-words.ts'
import { doseSheetWords } from '../papers-dose.ts'

export const dosePolicy = {
  kind: 'dose-policy',
  purpose: 'A dose this house starts from when nobody chose one.',
  sections: { for: 'For which row', dose: 'Dose' },
  fields: {
    drug: { label: 'Drug' },
    species: { label: 'Species', options: { dog: 'dog', cat: 'cat' } },
    use: { label: 'Purpose', options: doseSheetWords.uses },
    route: { label: 'Route', none: 'whatever the route', options: routeWords },
    qualifier: { label: 'Bracket of the formulary row', help: 'When the row has one, for example day 1.' },
    dose: { label: 'Dose', help: 'With its unit, for example 1 mg/kg.' },
    because: { label: 'Because' },
  },
} as const satisfies FormWords
