import type { FormWords } from '#core/forms/words.ts'
import { procedureWords } from '../app-form-words.ts'
import { countUnitNames, ownOutcomeNames } from '../own-figures.ts'

const counts = {
  events: { label: 'Had it' },
  total: { label: 'Known' },
  lost: { label: 'Not known' },
  notYetDue: { label: 'Not due yet' },
}

export const reportErratum = {
  kind: 'report-erratum',
  purpose: 'What stands otherwise now than in the frozen report of a year.',
  sections: { erratum: 'Erratum' },
  fields: {
    report: { label: 'Frozen report' },
    year: { label: 'Year of the operations' },
    readUntil: { label: 'Journal read up to entry' },
    numbers: { label: 'Numbers', add: 'Add a number', item: 'Number {number}' },
    'numbers.species': { label: 'Species', options: { dog: 'dog', cat: 'cat' } },
    'numbers.procedure': { label: 'Operation', options: procedureWords },
    'numbers.outcome': { label: 'Outcome', options: ownOutcomeNames },
    'numbers.unit': { label: 'Counted per', options: countUnitNames },
    'numbers.before': { label: 'In the report' },
    'numbers.before.events': counts.events,
    'numbers.before.total': counts.total,
    'numbers.before.lost': counts.lost,
    'numbers.before.notYetDue': counts.notYetDue,
    'numbers.after': { label: 'Now' },
    'numbers.after.events': counts.events,
    'numbers.after.total': counts.total,
    'numbers.after.lost': counts.lost,
    'numbers.after.notYetDue': counts.notYetDue,
    text: { label: 'What changed' },
    because: { label: 'Why' },
    entries: { label: 'Entries that caused it', add: 'Add an entry', item: 'Entry {number}' },
    by: { label: 'Written by' },
  },
} as const satisfies FormWords
