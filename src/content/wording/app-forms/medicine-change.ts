import type { FormWords } from '#core/forms/words.ts'
import { discharge } from './discharge.ts'

const words = discharge.fields

/** A medicine is asked for in the words of the discharge: it is the same thing, later. */
export const medicineChange = {
  kind: 'medicine-change',
  purpose: 'Medicines at home change. The home page is written anew, and the page handed out before no longer counts.',
  sections: { why: 'Why', stops: 'What stops', starts: 'What starts' },
  fields: {
    read: { label: 'Because of which reading of a result?', none: 'not because of a result' },
    because: { label: 'Why', help: 'As the colleague who opens this tomorrow needs it.' },
    stops: {
      label: 'Medicines given no more',
      none: 'nothing stops',
      add: 'Stop another medicine',
      item: 'Stopped medicine {number}',
    },
    'stops.drug': { label: 'Drug' },
    'stops.label': { label: 'Name as on the home page' },
    'stops.side': { label: 'Side', none: 'no side' },
    'stops.fromDay': { label: 'Given no more from (day)', help: 'For example 16 February 2026.' },
    'stops.fromTime': {
      label: 'Given no more from (time)',
      help: 'What is due before this time is still given.',
    },
    starts: {
      label: 'Medicines that start',
      none: 'nothing starts',
      add: 'Start another medicine',
      item: 'Started medicine {number}',
    },
    'starts.drug': words['medicines.drug'],
    'starts.label': words['medicines.label'],
    'starts.purpose': words['medicines.purpose'],
    'starts.form': words['medicines.form'],
    'starts.strength': words['medicines.strength'],
    'starts.each': words['medicines.each'],
    'starts.side': words['medicines.side'],
    'starts.times': words['medicines.times'],
    'starts.firstDay': { label: 'First day', help: 'For example 16 February 2026.' },
    'starts.firstTime': { label: 'First time on that day' },
    'starts.days': words['medicines.days'],
    'starts.withFood': words['medicines.withFood'],
    'starts.onDays': words['medicines.onDays'],
    'starts.steps': words['medicines.steps'],
    'starts.steps.fromDay': words['medicines.steps.fromDay'],
    'starts.steps.each': words['medicines.steps.each'],
    'starts.steps.times': words['medicines.steps.times'],
    'starts.steps.onDays': words['medicines.steps.onDays'],
  },
} as const satisfies FormWords
