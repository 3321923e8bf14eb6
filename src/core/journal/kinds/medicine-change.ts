import { z } from 'zod'
import { day, entryId, id, shortText, side, text, timeOfDay } from '../answers.ts'
import type { Json } from '../canonical.ts'
import { defineKind } from '../kind.ts'
import { homeMedicine, onEveryDay, withoutSteps } from './discharge.ts'

/** One medicine of the home page is given no more from a moment on the wall clock. */
const stoppedMedicine = z.strictObject({
  drug: id,
  /** As the home page calls it: a name that the page does not hold is still said to the owner. */
  label: shortText,
  /** Of a medicine for one eye; null for one that is swallowed. */
  side: side.nullable(),
  /** Doses before this day and time are still given. */
  fromDay: day,
  fromTime: timeOfDay,
})

/** Medicines at home change: because of what, which stop, which start. The page printed before no longer counts. */
export const medicineChange = defineKind({
  name: 'medicine-change',
  version: 3,
  subjects: ['animal'],
  body: z.strictObject({
    /** The reading of a result that asked for it. */
    read: entryId.nullable(),
    because: text,
    stops: z.array(stoppedMedicine),
    starts: z.array(homeMedicine),
  }),
  /** Version 1 knew no steps, version 2 no days between. */
  upcasts: {
    1: (older) => {
      const body = older as { readonly starts: readonly { readonly [field: string]: Json }[] }
      return { ...body, starts: withoutSteps(body.starts) }
    },
    2: (older) => {
      const body = older as { readonly starts: readonly { readonly [field: string]: Json }[] }
      return { ...body, starts: onEveryDay(body.starts) }
    },
  },
  example: {
    read: '0190a7c2-0000-7000-8000-000000000003',
    because: 'Resistant to the drug it went home with.',
    stops: [
      {
        drug: 'amoxicillin-clavulanate',
        label: 'Amoxicillin with clavulanate tablet 250 mg',
        side: null,
        fromDay: '2026-02-16',
        fromTime: '12:00',
      },
    ],
    starts: [
      {
        drug: 'marbofloxacin',
        label: 'Marbofloxacin tablet 20 mg',
        purpose: 'infection',
        form: 'tablet',
        strength: { value: '20', unit: 'mg/{tablet}' },
        each: '2',
        side: null,
        times: ['18:00'],
        firstDay: '2026-02-16',
        firstTime: '18:00',
        days: 21,
        onDays: 'every-day',
        withFood: 'either',
        steps: [],
      },
    ],
  },
})
