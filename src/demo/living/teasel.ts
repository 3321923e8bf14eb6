import type { Chart } from '../chart.ts'
import { staff } from '../practice.ts'
import { firstCall, living } from './animal.ts'
import type { Days } from './days.ts'

/**
 * An invented flat-faced dog of which almost nothing is known: told by its owner on the out-of-hours telephone the
 * evening before, with nerve signs. To be seen at once.
 */
export function teasel(days: Days): Chart {
  const one = living('teasel', 'contact-dale')
  const evening = days.ago(1)
  firstCall(
    one,
    evening,
    '21',
    {
      name: 'Teasel',
      species: 'dog',
      breed: 'French Bulldog',
      sex: 'male',
      neutered: 'unknown',
      born: null,
      referringVet: null,
      flatFace: 'yes',
    },
    {
      caller: 'owner',
      contact: 'contact-dale',
      reportedSide: 'unknown',
      complaint: 'Since this morning he holds his head crooked and falls over; one ear smells, he cannot say which.',
      daysOfSigns: 1,
      signs: [
        { sign: 'head-tilt', answer: 'yes' },
        { sign: 'falling', answer: 'yes' },
        { sign: 'drooped-face', answer: 'not-asked' },
        { sign: 'not-eating', answer: 'yes' },
        { sign: 'eye-red-or-shut', answer: 'not-asked' },
      ],
      drugAllergy: { answer: 'not-asked', what: null },
      urgency: 'today',
      because: 'Head tilt, falling and not eating, in a flat-faced dog: not to wait for the morning list.',
      mayFetchRecords: 'not-asked',
    },
  )
  one.chart.write(
    'weight',
    { at: `${evening} 21:11`, by: staff.moretti, subject: one.animal },
    { weight: { value: '12', unit: 'kg' }, typed: null, how: 'reported', bodyCondition: null },
  )
  one.chart.write(
    'note',
    { at: `${evening} 21:14`, by: staff.moretti, subject: one.animal },
    { text: 'Mr Dale can drive at any hour. The surgeon on call was told.' },
  )
  return one.chart
}
