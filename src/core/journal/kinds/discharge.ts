import { z } from 'zod'
import { day, decimalText, id, shortText, side, teachBack, text, timeOfDay } from '../answers.ts'
import type { Json } from '../canonical.ts'
import { defineKind } from '../kind.ts'
import { storedQuantity } from '../stored.ts'

/** On which days it is given: on every one, or on its first and then every other. */
const onDays = z.enum(['every-day', 'every-second-day'])

/** From this day on another amount, other clock times or other days: a dose that is brought down in steps. */
const medicineStep = z.strictObject({ fromDay: day, each: decimalText, times: z.array(timeOfDay).min(1), onDays })

/** One medicine for home: how much at which clock times, from when, for how many days. Times are on the wall clock. */
const medicineFields = z.strictObject({
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
  onDays,
  withFood: z.enum(['yes', 'no', 'either']),
  /** What changes within those days; empty for the same amount to the end. */
  steps: z.array(medicineStep),
})

type MedicineFields = z.infer<typeof medicineFields>

/** A step that begins on no day of the course, or not after the one before, says two things at once: it is asked again. */
export const homeMedicine = medicineFields.check(({ value, issues }) => {
  for (const { index, params } of stepsOutOfPlace(value)) {
    const input = value.steps[index]?.fromDay
    issues.push({
      code: 'custom',
      message: 'must be a later day of the course',
      input,
      path: ['steps', index, 'fromDay'],
      params,
    })
  }
})

type OutOfPlace = { readonly because: 'step-too-early' | 'step-too-late'; readonly day: string }

/** Which step, and the day it must lie after, or must not lie after. */
function stepsOutOfPlace({ firstDay, days, steps }: MedicineFields): { index: number; params: OutOfPlace }[] {
  return steps.flatMap(({ fromDay }, index): { index: number; params: OutOfPlace }[] => {
    const before = steps[index - 1]?.fromDay ?? firstDay
    const last = dayNumber(firstDay) + days - 1
    if (fromDay <= before) return [{ index, params: { because: 'step-too-early', day: before } }]
    return dayNumber(fromDay) <= last ? [] : [{ index, params: { because: 'step-too-late', day: dayOfNumber(last) } }]
  })
}

function dayOfNumber(number: number): string {
  return new Date(number * 86_400_000).toISOString().slice(0, 10)
}

/** Days since a fixed day. An entry may hold 30 February, which is kept as it came: it is counted on from 28 February. */
function dayNumber(text: string): number {
  const [year = 0, month = 1, date = 1] = text.split('-').map(Number)
  return Date.UTC(year, month - 1, date) / 86_400_000
}

/** Before there were steps, every medicine kept its amount to the end. */
export function withoutSteps(medicines: readonly { readonly [field: string]: Json }[]): Json {
  return medicines.map((medicine) => ({ ...medicine, steps: [] }))
}

/** Before that could be said, every medicine and every step of it was for every day. */
export function onEveryDay(medicines: readonly { readonly [field: string]: Json }[]): Json {
  const daily = { onDays: 'every-day' }
  return medicines.map((medicine) => {
    const steps = medicine.steps as readonly { readonly [field: string]: Json }[]
    return { ...medicine, ...daily, steps: steps.map((step) => ({ ...step, ...daily })) }
  })
}

/** The animal goes home: medicines, care, what the owner said back, who may be phoned. */
export const discharge = defineKind({
  name: 'discharge',
  version: 3,
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
    /** Who cares for the animal when it is not the owner, and whether that person has this page. */
    carer: z.strictObject({ contact: id, page: z.enum(['handed-over', 'not-yet']) }).nullable(),
  }),
  /** Version 1 knew no steps and did not ask who cares for the animal; version 2 knew no days between. */
  upcasts: {
    1: (older) => {
      const body = older as { readonly medicines: readonly { readonly [field: string]: Json }[] }
      return { ...body, medicines: withoutSteps(body.medicines), carer: null }
    },
    2: (older) => {
      const body = older as { readonly medicines: readonly { readonly [field: string]: Json }[] }
      return { ...body, medicines: onEveryDay(body.medicines) }
    },
  },
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
        onDays: 'every-day',
        withFood: 'yes',
        steps: [],
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
    carer: null,
  },
})
