import type { FormWords } from '#core/forms/words.ts'
import { agreementWords } from '../papers-agreement.ts'

const daysInWords = { 'every-day': 'every day', 'every-second-day': 'every second day' }

export const discharge = {
  kind: 'discharge',
  purpose: 'The animal goes home: medicines, care, what the owner said back.',
  sections: { medicines: 'Medicines for home', care: 'Care', taught: 'Said back', carer: 'Cared for by someone else' },
  fields: {
    medicines: {
      label: 'Medicines for home',
      none: 'no medicine to give at home',
      add: 'Add a medicine',
      item: 'Medicine {number}',
    },
    'medicines.drug': { label: 'Drug' },
    'medicines.label': { label: 'Name on the box', help: 'As the owner will read it.' },
    'medicines.purpose': { label: 'What it is for, in plain words' },
    'medicines.form': {
      label: 'Form',
      options: { tablet: 'tablet', liquid: 'liquid', 'eye-gel': 'eye gel', 'eye-ointment': 'eye ointment' },
    },
    'medicines.strength': { label: 'Strength', help: 'For example 1 mg in a tablet, or 5 mg/mL.' },
    'medicines.each': { label: 'Each time', help: 'Tablets, millilitres or drops as a number: 0.5 is half a tablet.' },
    'medicines.side': { label: 'Side', none: 'no side' },
    'medicines.times': { label: 'Clock times', help: 'For example 08:00, 20:00.' },
    'medicines.firstDay': { label: 'First day at home', help: 'For example 12 February 2026.' },
    'medicines.firstTime': {
      label: 'First time on that day',
      help: 'What is due earlier that day was given in the ward.',
    },
    'medicines.days': { label: 'For how many days' },
    'medicines.onDays': {
      label: 'On which days',
      help: 'Every second day: on its first day, and then on every other one.',
      options: daysInWords,
    },
    'medicines.withFood': {
      label: 'With food?',
      options: { yes: 'with food', no: 'on an empty stomach', either: 'either way' },
    },
    'medicines.steps': {
      label: 'Steps, when the amount changes on the way',
      help: 'A dose that is brought down: from which day how much. What stands above is the first step.',
      add: 'Add a step',
      item: 'Step {number}',
    },
    'medicines.steps.fromDay': { label: 'From this day on', help: 'For example 19 February 2026.' },
    'medicines.steps.each': { label: 'Each time' },
    'medicines.steps.times': { label: 'Clock times', help: 'For example 08:00.' },
    'medicines.steps.onDays': { label: 'On which days', options: daysInWords },
    collarUntil: { label: 'Collar until', help: 'Day and night. For example 24 February 2026.' },
    sutures: { label: 'Stitches', options: { 'to-come-out': 'to come out', dissolve: 'dissolve', none: 'none' } },
    food: { label: 'Food' },
    rest: { label: 'Rest and walks' },
    eyeCare: { label: 'Care of the eye', help: 'Leave empty when the eye needs none.' },
    nextVisit: { label: 'Next visit', help: 'For example 23 February 2026. Leave empty when none is agreed.' },
    taught: { label: 'What the owner said back', help: 'Rows left open were not asked.' },
    'taught.item': { label: 'Item', options: agreementWords.taughtItems },
    'taught.answer': {
      label: 'Answer',
      options: { 'own-words': 'in own words', 'with-help': 'with help', 'not-yet': 'not yet' },
    },
    taughtBy: { label: 'Talked over by' },
    carer: {
      label: 'Does somebody else care for the animal at home?',
      help: 'A sitter, a parent, a kennel: that person needs this page too.',
      open: 'Name who it is',
    },
    'carer.contact': { label: 'Who' },
    'carer.page': {
      label: 'Has this person the home page?',
      options: { 'handed-over': 'yes, handed over', 'not-yet': 'not yet' },
    },
  },
} as const satisfies FormWords
