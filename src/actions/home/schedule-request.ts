import { Temporal } from 'temporal-polyfill'
import { z } from 'zod'
import { procedureIds } from '#core/animal/procedure.ts'
import { sides, speciesList } from '#core/animal/species.ts'
import { day, timeOfDay } from '#core/journal/answers.ts'
import { owedPolicies, readSpan } from '#core/owed/policies.ts'
import { addDays } from '#core/time/calendar-day.ts'
import { instantText } from '#core/time/moment.ts'
import { positiveQuantityIn, quantityIn } from '#core/units/quantity-schema.ts'
import { listed, readInput } from '../input.ts'

/** RFC 3339 with its offset; without one the instant is not known, and a zone does not make it known twice a year. */
const instant = z.string().transform((text, context) => {
  const fail = (code: string, message: string) => {
    context.addIssue({ code: 'custom', message, params: { code } })
    return z.NEVER
  }
  if (!/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}/.test(text)) {
    return fail('wrong-time', `${JSON.stringify(text)} is not a time; write it like 2026-03-04T09:00:00+00:00.`)
  }
  if (!/(Z|[+-]\d{2}:\d{2})$/.test(text)) {
    return fail('no-offset', `${JSON.stringify(text)} has no offset; write it like ${text}+00:00, or with Z for UTC.`)
  }
  try {
    return instantText(Temporal.Instant.from(text))
  } catch {
    return fail('wrong-time', `${JSON.stringify(text)} is not a time that exists.`)
  }
})

/** An IANA name; an offset is not a zone, because it says nothing about clock changes. */
const zone = z.string().transform((text, context) => {
  try {
    if (!/^[A-Za-z]/.test(text)) throw new RangeError('not a name')
    return Temporal.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(text).timeZoneId
  } catch {
    const message = `${JSON.stringify(text)} is not an IANA zone; write a name like Europe/London.`
    context.addIssue({ code: 'custom', message, params: { code: 'unknown-zone' } })
    return z.NEVER
  }
})

const realDay = day.refine((text) => {
  try {
    return Temporal.PlainDate.from(text, { overflow: 'reject' }) !== undefined
  } catch {
    return false
  }
}, 'is not a day of the calendar')

const perSide = <Value extends z.ZodType>(value: Value) =>
  z.strictObject({ LEFT: value.optional(), RIGHT: value.optional() })

/** The tear strip is read after one minute, so `mm` and `mm/min` say the same. */
const tears = quantityIn('mm/min', 'mm')

const drug = z.string().min(1).max(80)
const clockTimes = z.array(timeOfDay).min(1, 'must name at least one time of day like 08:00')
const decimal = z
  .union([z.string(), z.number().transform(String)])
  .pipe(z.string().regex(/^\d+(\.\d+)?$/, 'must be a plain number'))

/** On which days it is given; the first day is always one of them. */
const onDays = listed(['every-day', 'every-second-day'], 'choice of days').default('every-day')

/** From a later day of the course on another amount, other clock times or other days. */
const step = z.strictObject({ fromDay: realDay, times: clockTimes, each: decimal.optional(), onDays })

/** At clock times every day or every second one (a home medicine), or every so many hours of real time (a ward medicine). */
const medicine = z
  .strictObject({
    drug,
    times: clockTimes.optional(),
    days: z.int().min(1).max(180).optional(),
    /** Without it a home medicine begins the day after the operation. */
    firstDay: realDay.optional(),
    firstTime: timeOfDay.optional(),
    /** Tablets each time; then the tablets of the whole course are counted. */
    each: decimal.optional(),
    onDays,
    /** A dose that is brought down; what stands beside it is the first step. */
    steps: z.array(step).default([]),
    everyHours: z.int().min(1).max(48).optional(),
    from: instant.optional(),
    doses: z.int().min(1).max(200).optional(),
  })
  .transform(({ drug: name, times, days, everyHours, from, doses, ...rest }, context) => {
    const { firstDay, firstTime, each, onDays, steps } = rest
    if (times && days !== undefined && everyHours === undefined) {
      for (const [index, { fromDay, each: stepEach }] of steps.entries()) {
        const fault = stepFault(fromDay, steps[index - 1]?.fromDay ?? firstDay, firstDay, days)
        const path = ['steps', index]
        if (fault) context.addIssue({ code: 'custom', path: [...path, 'fromDay'], message: fault })
        // Tablets are counted over all steps or not at all.
        const missing = (each === undefined) !== (stepEach === undefined)
        const message = 'must stand at the medicine and at each of its steps, or nowhere.'
        if (missing) context.addIssue({ code: 'custom', path: [...path, 'each'], message })
      }
      return { kind: 'clock' as const, drug: name, times, days, firstDay, firstTime, each, onDays, steps }
    }
    if (everyHours !== undefined && from !== undefined && doses !== undefined && !times && steps.length === 0) {
      return { kind: 'hours' as const, drug: name, everyHours, from, doses }
    }
    const message =
      'must have either times and days (at home, on the wall clock) or everyHours, from and doses (in the ward, by hours passed).'
    context.addIssue({ code: 'custom', message, params: { code: 'wrong-medicine' } })
    return z.NEVER
  })

/** Steps are days of the course, one after the other; without a first day nobody knows which days those are. */
function stepFault(day: string, before: string | undefined, first: string | undefined, days: number): string | null {
  if (first === undefined || before === undefined) return 'needs a firstDay of the medicine: steps are counted from it.'
  if (day <= before) return `must be after ${before}: every step begins later than the one before.`
  const last = addDays(first, days - 1)
  return day > last ? `must be a day of the course, ${last} at the latest.` : null
}

const policyNames = owedPolicies.map((name) => name.slice('owed.'.length))

/** The clinic's own spans, `{"suture-check": "12..14 days"}`, and the weekdays on which it is closed. */
const policy = z
  .looseObject({ closedWeekdays: z.array(z.int().min(1).max(7)).optional() })
  .superRefine((entries, context) => {
    for (const [name, value] of Object.entries(entries)) {
      if (name === 'closedWeekdays') continue
      if (!policyNames.includes(name)) {
        const message = `there is no policy "${name}"; known are ${policyNames.join(', ')} and closedWeekdays.`
        context.addIssue({ code: 'custom', path: [name], message, params: { code: 'unknown-policy' } })
      } else if (typeof value !== 'string' || readSpan(value) === undefined) {
        const message = `${JSON.stringify(value)} is not a span; write it like "12..14 days".`
        context.addIssue({ code: 'custom', path: [name], message, params: { code: 'wrong-span' } })
      }
    }
  })

const fields = z.strictObject({
  operation: z.strictObject({
    at: instant,
    zone,
    procedure: listed(procedureIds, 'procedure of the list'),
    side: listed(sides, 'side'),
    species: listed(speciesList, 'species'),
    /** `booked` also asks what is owed before it: baseline, weight, consent, last meal. */
    stage: listed(['done', 'booked'], 'stage').default('done'),
  }),
  /** Names the case; the calendar's UIDs stay the same for the same name, also when the operation moves. */
  case: z.string().min(1).max(80).optional(),
  animal: z
    .strictObject({
      name: z.string().min(1).max(300).optional(),
      weight: positiveQuantityIn('kg').optional(),
      born: realDay.optional(),
    })
    .default({}),
  findings: z
    .strictObject({
      at: instant.optional(),
      blink: perSide(listed(['absent', 'weak', 'normal'], 'blink')).optional(),
      tearTest: perSide(tears).optional(),
      block: z.strictObject({ drug, at: instant }).optional(),
    })
    .optional(),
  medicines: z.array(medicine).default([]),
  policy: policy.default({}),
  closed: z.array(realDay).default([]),
})

export type ScheduleRequest = z.infer<typeof fields>
export type ScheduledMedicine = ScheduleRequest['medicines'][number]

/** Reads a request at the door; the first wrong field is named, with what would be right. */
export function readScheduleRequest(input: unknown): ScheduleRequest {
  return readInput(fields, input)
}
