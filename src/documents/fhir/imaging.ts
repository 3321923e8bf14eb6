import { modalityCodes, systems } from '#content/exchange/fhir-codes.ts'
import { exchangeInEnglish as say } from '#content/wording/exchange.ts'
import { fill } from '#core/outcome/finding.ts'
import type { Mapping } from './around.ts'
import { local, publicCoding } from './concepts.ts'
import { dateTime } from './fhir-time.ts'
import { derivedUuid, entryUuid, urn } from './naming.ts'
import { coded, component, finding, observation } from './observations.ts'
import type { Resource } from './written.ts'

/** The report with one observation for each side it speaks of; the study itself is named, never copied. */
export const imaging: Mapping<'imaging'> = (line, around) => {
  const { body, header } = line
  const study = derivedUuid(header.id, 'study')
  const sides = (['LEFT', 'RIGHT'] as const).flatMap((side) => {
    const said = body[side]
    if (said === null) return []
    return observation(line, around, {
      id: derivedUuid(header.id, 'images', side),
      code: finding('ear-on-images'),
      side,
      category: 'imaging',
      component: [
        component('bulla', coded(said.bulla)),
        component('bulla-wall', coded(said.bullaWall)),
        component('canal-mineral', coded(said.canalMineral)),
        component('mass', coded(said.mass)),
        component('mass-place', coded(said.massPlace)),
        component('mass-size', coded(said.massSize)),
      ],
    })
  })
  const report: Resource = {
    resourceType: 'DiagnosticReport',
    id: entryUuid(header.id),
    status: 'final',
    code: local('imaging-report', fill(say.imagingReport, { modality: body.modality })),
    subject: around.patient(line),
    effectiveDateTime: dateTime(header.happenedAt),
    resultsInterpreter: [{ display: body.reportedBy }],
    result: sides.map(({ id = '' }) => ({ reference: urn(id), type: 'Observation' })),
    imagingStudy: body.study === null ? [] : [{ reference: urn(study), type: 'ImagingStudy' }],
    conclusion: body.text,
  }
  return body.study === null ? [report, ...sides] : [report, studyResource(body.study), ...sides]

  function studyResource(name: string): Resource {
    const isUid = /^[0-2](\.(0|[1-9]\d*))+$/.test(name)
    const modality =
      body.modality === 'radiographs'
        ? { display: body.modality }
        : publicCoding(systems.modality, modalityCodes[body.modality])
    return {
      resourceType: 'ImagingStudy',
      id: study,
      identifier: [
        isUid ? { system: systems.dicomUid, value: `urn:oid:${name}` } : { system: systems.ids, value: name },
      ],
      // Whether the pictures can still be had, the entry does not say.
      status: 'unknown',
      modality: [modality],
      subject: around.patient(line),
      started: dateTime(header.happenedAt),
    }
  }
}
