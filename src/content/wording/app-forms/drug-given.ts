import type { FormWords } from '#core/forms/words.ts'
import { routeWords } from '../app-form-words.ts'
import { doseSheetWords } from '../papers-dose.ts'

export const drugGiven = {
  kind: 'drug-given',
  purpose: 'What was really given. This is always recorded; a doubtful amount is flagged, never refused.',
  sections: { drug: 'Drug', dose: 'How much and where', supply: 'Plan and supply' },
  fields: {
    drug: { label: 'Drug' },
    written: { label: 'As written on the label', help: 'When the name on the label is another one.' },
    use: { label: 'Purpose', options: doseSheetWords.uses },
    amount: { label: 'Amount given', help: 'With its unit, for example 8 mg or 1.5 mL.' },
    volume: { label: 'Volume given' },
    route: { label: 'Route', options: routeWords },
    site: { label: 'Site', help: 'With LEFT or RIGHT when it has a side.' },
    line: { label: 'Line of the plan', help: 'Name of the planned line, when there is one.' },
    batch: { label: 'Batch' },
    ampoule: { label: 'Ampoule', help: 'Number on the ampoule, for controlled drugs.' },
  },
} as const satisfies FormWords
