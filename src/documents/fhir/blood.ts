import { exchangeInEnglish as say } from '#content/wording/exchange.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { plain } from '#core/units/quantity.ts'
import { measuredOf } from '#core/workup/blood-result.ts'
import type { Around, Mapping } from './around.ts'
import { exactly, local, words } from './concepts.ts'
import { dateTime } from './fhir-time.ts'
import { derivedUuid, entryUuid, urn } from './naming.ts'
import { coded, component, finding, observation, type Value } from './observations.ts'
import type { Resource, ResourceOf } from './written.ts'

type Result = BodyOf<'blood-test'>['results'][number]

/** The report with one observation for each printed line; the range and the flag travel as the words they are. */
export const bloodTest: Mapping<'blood-test'> = (line, around) => {
  const { body, header } = line
  const results = body.results.map((result, row) => oneResult(result, row, line, around))
  const report: Resource = {
    resourceType: 'DiagnosticReport',
    id: entryUuid(header.id),
    status: 'final',
    code: local(`blood-${body.panel}`, fill(say.bloodReport, { panel: say.panels[body.panel] })),
    subject: around.patient(line),
    effectiveDateTime: dateTime(header.happenedAt),
    performer: [body.laboratory === null ? around.author(line) : around.people.contact(body.laboratory)],
    result: results.map(({ id = '' }) => ({ reference: urn(id), type: 'Observation' })),
    conclusion: body.text ?? undefined,
  }
  return [report, ...results]
}

function oneResult(
  result: Result,
  row: number,
  line: Line<BodyOf<'blood-test'>>,
  around: Around,
): ResourceOf<'Observation'> {
  const { analyte, flag, range } = result
  return {
    ...observation(line, around, {
      id: derivedUuid(line.header.id, 'result', String(row)),
      code: words(analyte),
      category: 'laboratory',
      value: resultValue(result, around.file.clinic.decimalMark),
    }),
    interpretation: flag === null ? [] : [words(flag)],
    referenceRange: range === null ? [] : [{ text: range }],
  }
}

/** A number only in a unit that we have; everything else stays the text it was. */
function resultValue(result: Result, decimalMark: '.' | ','): Value {
  const measured = measuredOf(result, decimalMark)
  if (measured === null) return { valueString: [result.printed, result.unit ?? ''].join(' ').trim() }
  return { valueQuantity: exactly({ value: plain(measured.value), unit: measured.unit }) }
}

export const bloodType: Mapping<'blood-type'> = (line, around) => {
  const { system, dea1, ab, method, text } = line.body
  return [
    observation(line, around, {
      code: finding('blood-type'),
      category: 'laboratory',
      method: method.replaceAll('-', ' '),
      note: [text],
      component: [system === 'ab' ? component('ab', coded(ab)) : component('dea-1', coded(dea1))],
    }),
  ]
}
