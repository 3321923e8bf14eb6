import type { CodeableConcept } from 'fhir/r4'
import { loincCodes, systems } from '#content/exchange/fhir-codes.ts'
import { type FindingCode, findingNames, exchangeInEnglish as say } from '#content/wording/exchange.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import type { Around, Mapping, OfLine } from './around.ts'
import { absent, answer, exactly, local, publicCoding } from './concepts.ts'
import { derivedUuid } from './naming.ts'
import { counted, finding, observation, type Value } from './observations.ts'
import type { ResourceOf } from './written.ts'

type Measured = BodyOf<'observation'>['values'][number]
type ObservationLine = Line<BodyOf<'observation'>>

/**
 * Our code and words, with the LOINC code where there is one. R4 wants a vital sign precise to the day (vs-1): one of
 * "March 2024" is told without the public code.
 */
function vitalCode(what: FindingCode, { header: { happenedAt } }: OfLine): CodeableConcept {
  const ours = local(what, findingNames[what])
  const coarse = happenedAt.precision === 'year' || happenedAt.precision === 'month'
  if (coarse || !Object.hasOwn(loincCodes, what)) return ours
  const loinc = publicCoding(systems.loinc, loincCodes[what as keyof typeof loincCodes])
  return { coding: [loinc, ...(ours.coding ?? [])], text: findingNames[what] }
}

export const weight: Mapping<'weight'> = (line, around) => {
  const { body } = line
  const typed = body.typed === null ? null : fill(say.typed, body.typed)
  const found = [
    observation(line, around, {
      code: vitalCode('weight', line),
      category: 'vital-signs',
      value: { valueQuantity: exactly(body.weight) },
      method: say.weighed[body.how],
      note: [typed],
    }),
  ]
  if (body.bodyCondition === null) return found
  const id = derivedUuid(line.header.id, 'body-condition')
  return [
    ...found,
    observation(line, around, { code: finding('body-condition'), id, value: counted(body.bodyCondition) }),
  ]
}

/** One observation for each value; systolic and diastolic pressure stand together in the panel that LOINC wants. */
export const measurements: Mapping<'observation'> = (line, around) => {
  const { values, pain, first, side, unmeasured, text } = line.body
  const inPanel = (value: Measured) => value.what === 'systolic' || value.what === 'diastolic'
  const single = values.filter((value) => !inPanel(value))
  const found = [
    ...single.map((value, place) => vital(line, around, value, place)),
    ...pressurePanels(line, around, values.filter(inPanel)),
  ]
  const parts = (key: string) => ({ id: derivedUuid(line.header.id, key) })
  if (pain !== null) {
    const { scale, outOf } = pain
    const code = { text: fill(say.painScale, { scale, outOf: String(outOf), name: findingNames.pain }) }
    found.push(observation(line, around, { ...parts('pain'), code, value: counted(pain.score), category: 'survey' }))
  }
  if (first !== null) {
    const value = { valueCodeableConcept: answer(first) }
    const whose = side === null ? {} : { side }
    found.push(observation(line, around, { ...parts('first'), code: finding('first-event'), value, ...whose }))
  }
  if (unmeasured !== null) {
    const value = { valueString: unmeasured }
    found.push(observation(line, around, { ...parts('unmeasured'), code: finding('nothing-measured'), value }))
  }
  if (text !== null) {
    found.push(
      observation(line, around, { ...parts('text'), code: finding('ward-note'), value: { valueString: text } }),
    )
  }
  return found.map((one, place) => (place === 0 ? { ...one, id: line.header.id.toLowerCase() } : one))
}

function vital(line: ObservationLine, around: Around, value: Measured, place: number): ResourceOf<'Observation'> {
  return observation(line, around, {
    id: derivedUuid(line.header.id, 'value', String(place), value.what),
    code: vitalCode(value.what, line),
    category: 'vital-signs',
    value: valueUnlessArtefact(value),
    method: value.method,
    note: [artefactNote(value)],
  })
}

/** The n-th systolic with the n-th diastolic; the one that is missing is said to be unknown. */
function pressurePanels(
  line: ObservationLine,
  around: Around,
  values: readonly Measured[],
): ResourceOf<'Observation'>[] {
  const upper = values.filter(({ what }) => what === 'systolic')
  const lower = values.filter(({ what }) => what === 'diastolic')
  return Array.from({ length: Math.max(upper.length, lower.length) }, (_, place) => {
    const pair = [upper[place], lower[place]].filter((value) => value !== undefined)
    const methods = [...new Set(pair.flatMap(({ method }) => method ?? []))]
    const part = (what: 'systolic' | 'diastolic', value: Measured | undefined) => ({
      code: vitalCode(what, line),
      ...(value === undefined ? { dataAbsentReason: absent('unknown') } : valueUnlessArtefact(value)),
    })
    return observation(line, around, {
      id: derivedUuid(line.header.id, 'pressure', String(place)),
      code: vitalCode('blood-pressure', line),
      category: 'vital-signs',
      method: methods.join('; '),
      note: pair.map(artefactNote),
      component: [part('systolic', upper[place]), part('diastolic', lower[place])],
    })
  })
}

/** An artefact is no measurement: the digits stay readable in the note and are no value. */
function valueUnlessArtefact({ value, artefact }: Measured): Value {
  return artefact ? { dataAbsentReason: absent('error') } : { valueQuantity: exactly(value) }
}

function artefactNote({ value, artefact }: Measured): string | null {
  return artefact ? fill(say.artefact, value) : null
}
