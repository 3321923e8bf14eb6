import { z } from 'zod'
import { day, decimalText, id, shortText, side, teachBack, text, timeOfDay } from '../answers.ts'
import { defineKind } from '../kind.ts'
import { storedQuantity } from '../stored.ts'

/** One medicine for home: how much at which clock times, from when, for how many days. Times are on the wall clock. */
export const homeMedicine = z.strictObject({
  drug: id,
  label: shortText,
  purpose: shortText,
  form: z.enum(['tablet', 'liquid', 'eye-gel', 'eye-ointment']),
  strength: storedQuantity('mg/{tablet}', 'mg/mL', '%').nullable(),
  /** Tablets, millilitres or drops each time, as decimal text. */
  each: decimalText,
  side: side.nullable(),
  times: z.array(timeOfDay).min(1),
  firstDay: day,
  /** First dose of the first day; doses before it were given in the ward. */
  firstTime: timeOfDay,
  days: z.int().min(1).max(180),
  withFood: z.enum(['yes', 'no', 'either']),
})

/** The animal goes home: medicines, care, what the owner said back, who may be phoned. */
export const discharge = defineKind({
  name: 'discharge',
  version: 1,
  subjects: ['animal'],
  body: z.strictObject({
    medicines: z.array(homeMedicine),
    collarUntil: day,
    sutures: z.enum(['to-come-out', 'dissolve', 'none']),
    food: text,
    rest: text,
    eyeCare: text.nullable(),
    nextVisit: day.nullable(),
    taught: teachBack,
    taughtBy: id,
  }),
  example: {
    medicines: [
      {
        drug: 'meloxicam',
        label: 'Meloxicam chewable tablet 1 mg',
        purpose: 'pain and swelling',
        form: 'tablet',
        strength: { value: '1', unit: 'mg/{tablet}' },
        each: '1',
        side: null,
        times: ['08:00'],
        firstDay: '2026-02-12',
        firstTime: '08:00',
        days: 7,
        withFood: 'yes',
      },
    ],
    collarUntil: '2026-02-24',
    sutures: 'to-come-out',
    food: 'Soft food for two weeks.',
    rest: 'Short walks on the lead; help on stairs while unsteady.',
    eyeCare: null,
    nextVisit: '2026-02-23',
    taught: [{ item: 'collar', answer: 'own-words' }],
    taughtBy: 'person-nurse',
  },
})
