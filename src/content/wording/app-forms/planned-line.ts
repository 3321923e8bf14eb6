import type { FormWords } from '#core/forms/words.ts'
import { routeWords } from '../app-form-words.ts'
import { howInEnglish as how } from '../app-how.ts'
import { howFields } from '../app-how-fields.ts'
import { doseSheetWords } from '../papers-dose.ts'

const { labels } = how

export const plannedLine = {
  kind: 'planned-line',
  purpose: 'One line of the dose plan: drug, chosen dose and why, amount and volume.',
  sections: { drug: 'Drug', dose: 'Chosen dose', how: 'How it is given', amount: 'Worked out' },
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
    shelfItem: { label: 'Product on the shelf', none: 'not settled' },
    deficit: { label: 'Loss of water made good', open: 'Add the loss' },
    'deficit.percent': { label: labels.deficit },
    'deficit.over': { label: labels.deficitOver },
    blood: { label: 'Blood', open: 'Add what is known of the blood' },
    'blood.goal': { label: 'What it is to reach', open: 'Add the goal' },
    'blood.goal.now': { label: labels.pcvNow },
    'blood.goal.aim': { label: labels.pcvAim },
    'blood.goal.donorPcv': { label: labels.pcvDonor },
    'blood.donor': { label: labels.donor, none: how.notTyped, options: how.donors },
    'blood.crossMatch': { label: labels.crossMatch, none: how.notMatched, options: how.crossMatch },
    worked: { label: 'Worked out besides', open: 'Add what was worked out besides' },
    'worked.rate': { label: 'Pump' },
    'worked.label': { label: 'On the label of the bag or syringe' },
    'worked.fluid': { label: 'Fluid of the bag or syringe' },
    'worked.loading': { label: 'Loading dose', open: 'Add the loading dose' },
    'worked.loading.amount': { label: 'Amount of the loading dose' },
    'worked.loading.drawn': { label: 'Volume of the loading dose' },
    'worked.tablets': { label: 'Tablets for one dose' },
    'worked.dispense': { label: 'To hand out' },
    amount: { label: 'Amount', help: 'For example 8.2 mg.' },
    volume: { label: 'Volume' },
    drawn: { label: 'Volume that can be drawn' },
  },
  groups: { how: howFields },
} as const satisfies FormWords
