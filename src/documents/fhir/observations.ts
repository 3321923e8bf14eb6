import type { CodeableConcept, Observation, ObservationComponent } from 'fhir/r4'
import { systems } from '#content/exchange/fhir-codes.ts'
import { type FindingCode, findingNames } from '#content/wording/exchange.ts'
import type { Side } from '#core/animal/species.ts'
import type { StoredQuantity } from '#core/journal/stored.ts'
import type { Unit } from '#core/units/unit.ts'
import type { Around, OfLine } from './around.ts'
import { type AbsentReason, absent, answer, exactly, local, notes, sideSite } from './concepts.ts'
import { dateTime } from './fhir-time.ts'
import { entryUuid } from './naming.ts'
import type { ResourceOf, Written } from './written.ts'

/** One finding: a quantity, a whole number, yes or no, a coded answer, or the reason why there is none. */
export type Value = Written<
  Pick<
    Observation,
    'valueQuantity' | 'valueInteger' | 'valueBoolean' | 'valueString' | 'valueCodeableConcept' | 'dataAbsentReason'
  >
>

/** Answers of our lists that say that there is no answer. */
const noAnswers: Readonly<Record<string, AbsentReason>> = {
  'not-assessed': 'not-performed',
  'not-reported': 'unknown',
  'not-asked': 'not-asked',
  unknown: 'unknown',
}

export function coded(code: string): Value {
  const reason = Object.hasOwn(noAnswers, code) ? noAnswers[code] : undefined
  return reason === undefined ? { valueCodeableConcept: answer(code) } : { dataAbsentReason: absent(reason) }
}

export function measured(quantity: StoredQuantity<Unit> | null): Value {
  return quantity === null ? { dataAbsentReason: absent('not-performed') } : { valueQuantity: exactly(quantity) }
}

export function counted(number: number | null): Value {
  return number === null ? { dataAbsentReason: absent('not-performed') } : { valueInteger: number }
}

export function finding(code: FindingCode): CodeableConcept {
  return local(code, findingNames[code])
}

export function component(code: FindingCode, value: Value): Written<ObservationComponent> {
  return { code: finding(code), ...value }
}

export type Parts = {
  readonly code: CodeableConcept
  readonly id?: string
  readonly side?: Side | undefined
  readonly value?: Value
  readonly category?: 'vital-signs' | 'exam' | 'laboratory' | 'imaging' | 'survey'
  readonly method?: string | null
  readonly note?: readonly (string | null)[]
  readonly component?: readonly Written<ObservationComponent>[]
}

/** What every observation of an entry has in common: about whom, when, by whom. */
export function observation(line: OfLine, around: Around, parts: Parts): ResourceOf<'Observation'> {
  const { code, value, side, category = 'exam', method, note = [], component: inside } = parts
  const { subject, happenedAt, id } = line.header
  return {
    resourceType: 'Observation',
    id: parts.id ?? entryUuid(id),
    partOf: subject.kind === 'operation' ? operationReference(around, subject.operation) : [],
    status: 'final',
    category: [{ coding: [{ system: systems.observationCategory, code: category }] }],
    code,
    subject: around.patient(line),
    effectiveDateTime: dateTime(happenedAt),
    performer: [around.author(line)],
    ...value,
    note: notes(...note),
    bodySite: side === undefined ? undefined : sideSite(side),
    method: method ? { text: method } : undefined,
    component: inside === undefined ? [] : [...inside],
  }
}

/** The operation an entry belongs to, by its signed summary or its first cut. */
export function operationReference(around: Around, operation: string) {
  const done = around.operations.get(operation)
  return done === undefined ? [] : [around.entry(done, 'Procedure')]
}
