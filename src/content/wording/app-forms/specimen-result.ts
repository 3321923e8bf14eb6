import type { FormWords } from '#core/forms/words.ts'
import { specimenWords } from '../report.ts'

export const specimenResult = {
  kind: 'specimen-result',
  purpose: 'What the laboratory wrote, raw. Reading and deciding is another entry.',
  sections: { report: 'The report', isolates: 'What grew', words: 'Text of the report' },
  fields: {
    specimen: { label: 'Which specimen?' },
    status: { label: 'Report', options: specimenWords.status },
    growth: { label: 'Growth', options: { none: 'no growth', growth: 'growth', 'not-a-culture': 'not a culture' } },
    isolates: { label: 'What grew', add: 'Add an organism', item: 'Organism {number}' },
    'isolates.organism': { label: 'Organism, as printed' },
    'isolates.results': { label: 'Drugs tested', add: 'Add a drug', item: 'Drug {number}' },
    'isolates.results.drug': { label: 'Drug, as printed' },
    'isolates.results.raw': { label: 'Result, as printed', help: 'With its sign and unit, for example <=0.5 mg/L.' },
    text: { label: 'Text of the report', help: 'For histology and cytology: the wording that matters.' },
  },
} as const satisfies FormWords
