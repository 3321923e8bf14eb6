import { z } from 'zod'
import { isZone } from '#core/time/moment.ts'

/** The ordinary tables of a clinic, each row with a who/when trail; entries refer to them by id. */
const line = z.string().min(1).max(300)

export const clinicRow = z.strictObject({
  name: line,
  address: z.array(line),
  phone: line,
  outOfHoursPhone: line.nullable(),
  email: line.nullable(),
  zone: z.string().refine(isZone, 'must be an IANA zone, like Europe/London'),
  language: line,
  /** How numbers are typed here: `12.5` or `12,5`. */
  decimalMark: z.enum(['.', ',']),
  currency: z.string().regex(/^[A-Z]{3}$/),
  /** Days of the week the clinic is closed for visits, 1 = Monday … 7 = Sunday. */
  closedWeekdays: z.array(z.int().min(1).max(7)),
})
export type ClinicRow = z.infer<typeof clinicRow>

export const personRow = z.strictObject({
  name: line,
  role: z.enum(['surgeon', 'nurse', 'anaesthetist', 'desk', 'manager', 'read-only']),
  letters: line.nullable(),
})
export type PersonRow = z.infer<typeof personRow>

export const contactRow = z.strictObject({
  kind: z.enum(['owner', 'vet', 'laboratory', 'other']),
  name: line,
  practice: line.nullable(),
  phone: line.nullable(),
  email: line.nullable(),
  address: z.array(line),
})
export type ContactRow = z.infer<typeof contactRow>

export const priceRow = z.strictObject({ label: line, low: line, high: line, currency: z.string().regex(/^[A-Z]{3}$/) })

export const closedDayRow = z.strictObject({
  day: z.string().regex(/^\d{4}-\d{2}-\d{2}$/, 'must be a day like 2026-12-25'),
  because: line,
})

/** One schema per register. Rows of any other register, or with other fields, are refused at the door. */
export const registerRows = {
  clinic: clinicRow,
  person: personRow,
  contact: contactRow,
  price: priceRow,
  'closed-day': closedDayRow,
} as const
