import { Unreadable } from '../fault.ts'
import { component, placeOf } from './fields.ts'
import type { Segment } from './segments.ts'

const shape = /^(\d{4})(?:(\d{2})(?:(\d{2})(?:(\d{2})(\d{2})?(?:(\d{2})(?:\.\d{1,4})?)?)?)?)?([+-]\d{2}\d{2})?$/

/**
 * `202603011420+0100` as `2026-03-01T14:20+01:00`. An hour without minutes is a day.
 *
 * @example readTime(obr, 7) // '2026-03-01T14:20'
 * Reference: HL7 version 2.5.1, section 2.A.22, data type DTM.
 */
export function readTime(segment: Segment, field: number): string | null {
  const text = component(segment, field)
  if (text === null) return null
  const match = shape.exec(text)
  const [, year, month, day, hour, minute, , zone] = match ?? []
  const wrong = !match || Number(month ?? 1) > 12 || Number(day ?? 1) > 31 || Number(hour ?? 0) > 23 || month === '00'
  if (wrong || day === '00' || Number(minute ?? 0) > 59) {
    throw new Unreadable('date-unreadable', text, placeOf(segment, field))
  }
  const date = [year, month, day].filter((part) => part !== undefined).join('-')
  if (day === undefined || minute === undefined) return date
  return `${date}T${hour}:${minute}${zone ? `${zone.slice(0, 3)}:${zone.slice(3)}` : ''}`
}
