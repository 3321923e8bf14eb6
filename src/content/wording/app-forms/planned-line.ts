import type { FormWords } from '#core/forms/words.ts'
import { routeWords } from '../app-form-words.ts'
import { doseSheetWords } from '../papers-dose.ts'

export const plannedLine = {
  kind: 'planned-line',
  purpose: 'One line of the dose plan: drug, chosen dose and why, amount and volume.',
  sections: { drug: 'Drug', dose: 'Chosen dose', amount: 'Worked out' },
  fields: {
    line: { label: 'Name of the line', help: 'Short, for example block or antiemetic.' },
    drug: { label: 'Drug' },
    use: { label: 'Purpose', options: doseSheetWords.uses },
    route: { label: 'Route', none: 'not said', options: routeWords },
    qualifier: { label: 'Bracket of the formulary row', help: 'When the row has one, for example day 1.' },
    dose: { label: 'Dose', help: 'With its unit, for example 1 mg/kg. No dose is chosen for you.' },
    because: { label: 'Why this dose' },
    plan: { label: 'From our usual plan', help: 'Name of the plan, when the line comes from one.' },
    weight: { label: 'Weight it was worked out with' },
    stock: { label: 'Strength on the shelf', help: 'For example 5 mg/mL.' },
    amount: { label: 'Amount', help: 'For example 8.2 mg.' },
    volume: { label: 'Volume' },
    drawn: { label: 'Volume that can be drawn' },
  },
} as const satisfies FormWords
