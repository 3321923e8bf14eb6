import { describe, expect, it } from 'vitest'
import { caseFile } from '#actions/journal/case-file.ts'
import { readJournal } from '#actions/journal/read-journal.ts'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { caseStreams } from '#core/journal/case-file.ts'
import { owedOf } from '#core/owed/owed.ts'
import { demoCases, demoFile } from '#demo/index.ts'
import { fhirBundle } from '#documents/fhir/bundle.ts'

/**
 * A receiver's walk through the bundle of each invented case, from resource to resource as HL7 FHIR R4 (4.0.1) links
 * them. Whether each resource is legal is asked elsewhere (`fhir.test.ts`, `fhir-schema.test.ts`); here it is asked
 * whether what somebody needs of the case is there, is coded, and can be reached.
 */
// biome-ignore lint/suspicious/noExplicitAny: what is read back is JSON as a receiver gets it.
type Json = any

/** Codes that UCUM has (ucum.org), of those a case may carry; what is counted stands in braces. */
const ucum =
  /^(kg|g|mg|ug|mL|L|mm|cm|Cel|%|%\{vol\}|\/min|mm\/min|mm\[Hg\]|min|h|d|mmol\/L|umol\/L|mg\/L|mg\/dL|g\/L|g\/dL|U\/L|10\*9\/L|\{[a-z]+\}|(m|u)?g\/kg(\/(h|min))?|mL\/kg(\/h)?|mL\/h|(m|u)g\/m2)$/

function bundleOf(name: (typeof demoCases)[number]['name']): Json[] {
  const journal = readJournal(demoFile([name]))
  return caseStreams(journal.entries).map((stream) => {
    const file = caseFile(journal, stream)
    return JSON.parse(fhirBundle(file, owedOf(file, procedures, { rules: owedRules }), '2026-11-20T10:00:00.000Z'))
  })
}

function within(value: Json): Json[] {
  if (typeof value !== 'object' || value === null) return []
  return [value, ...Object.values(value).flatMap(within)]
}

const ears = ['ear-LEFT', 'ear-RIGHT']
const sideIn = ({ coding = [] }: Json) => coding.find(({ code }: Json) => ears.includes(code))?.code

describe.each(demoCases.map(({ name }) => name))('a receiver of the invented case %s', (name) => {
  const [bundle] = bundleOf(name)
  const named = new Map<string, Json>(bundle.entry.map(({ fullUrl, resource }: Json) => [fullUrl, resource]))
  const of = (type: string): Json[] => [...named.values()].filter(({ resourceType }) => resourceType === type)
  const at = (reference: Json): Json => named.get(reference?.reference)
  const [patient] = of('Patient')

  it('follows every reference to a resource of the type it says', () => {
    const all = within(bundle).filter(({ reference }) => typeof reference === 'string')
    expect(all.length).toBeGreaterThan(100)
    expect(all.filter((one) => at(one)?.resourceType !== one.type)).toEqual([])
  })

  it('finds one animal with its species, and its owner', () => {
    expect(of('Patient')).toHaveLength(1)
    const { url, extension } = patient.extension[0]
    expect(url).toBe('http://hl7.org/fhir/StructureDefinition/patient-animal')
    const species = extension.find((part: Json) => part.url === 'species').valueCodeableConcept
    expect(species.coding[0].system).toBe('http://www.ncbi.nlm.nih.gov/taxonomy')
    expect(['9615', '9685']).toContain(species.coding[0].code)
    expect(patient.name[0].text).toMatch(/\S/)
    const owner = of('RelatedPerson').find(({ relationship }) =>
      relationship.some(({ coding }: Json) => coding[0].code === 'owner'),
    )
    expect(at(owner.patient)).toBe(patient)
    expect(owner.name[0].text).toMatch(/\S/)
    expect(owner.telecom[0]).toMatchObject({ system: 'phone' })
  })

  it('finds the operation: which, when, by whom, why, on which ear, and what was booked for it on the same ear', () => {
    expect(of('Procedure').length).toBeGreaterThan(0)
    for (const done of of('Procedure')) {
      expect(at(done.subject)).toBe(patient)
      expect(done.status).toBe('completed')
      expect(done.code.coding[0].code).toBe('teca-lbo')
      expect(Date.parse(done.performedPeriod.end)).toBeGreaterThan(Date.parse(done.performedPeriod.start))
      const surgeon = done.performer.find((one: Json) => one.function.coding[0].code === 'surgeon')
      expect(at(surgeon.actor).resourceType).toBe('Practitioner')
      expect(done.reasonCode[0].text).toMatch(/\S/)
      expect(ears).toContain(sideIn(done.bodySite[0]))
      expect(sideIn(at(done.basedOn[0]).bodySite[0])).toBe(sideIn(done.bodySite[0]))
    }
  })

  it('finds every sample with its label, what it is, its ear, who took it when, and what was asked of it', () => {
    expect(of('Specimen').length).toBeGreaterThan(0)
    for (const sample of of('Specimen')) {
      expect(at(sample.subject)).toBe(patient)
      expect(sample.identifier[0].value).toMatch(/\S/)
      expect(sample.type.coding[0].code).toMatch(/\S/)
      expect(ears).toContain(sideIn(sample.collection.bodySite))
      expect(sample.collection.collectedDateTime).toMatch(/T\d\d:\d\d:\d\d/)
      expect(at(sample.collection.collector).resourceType).toBe('Practitioner')
      const request = at(sample.request[0])
      expect(request.orderDetail.length).toBeGreaterThan(0)
      expect(at(request.specimen[0])).toBe(sample)
    }
  })

  it('comes from each report of a laboratory to its sample, and to results that belong to the same sample', () => {
    const reports = of('DiagnosticReport').filter(({ specimen }) => specimen !== undefined)
    expect(reports.length).toBeGreaterThan(0)
    for (const report of reports) {
      expect(at(report.subject)).toBe(patient)
      expect(report.code.text).toMatch(/\S/)
      expect(['preliminary', 'final', 'corrected']).toContain(report.status)
      const sample = at(report.specimen[0])
      expect(sample.resourceType).toBe('Specimen')
      const results = (report.result ?? []).map(at)
      const members = results.flatMap(({ hasMember = [] }: Json) => hasMember.map(at))
      for (const result of [...results, ...members]) {
        expect(at(result.specimen)).toBe(sample)
        expect(ears).toContain(sideIn(result.bodySite))
      }
      expect(results.length > 0 || report.conclusion !== undefined).toBe(true)
    }
  })

  it('reads each look at an ear with the ear coded, and each measurement with a unit of UCUM', () => {
    const ofEars = of('Observation').filter(({ code }) =>
      ['ear-examined', 'operated-ear', 'cytology', 'ear-on-images'].includes(code.coding?.[0].code),
    )
    expect(ofEars.length).toBeGreaterThan(3)
    expect(ofEars.filter(({ bodySite }) => !ears.includes(sideIn(bodySite ?? {})))).toEqual([])
    for (const one of of('Observation')) {
      expect(at(one.subject)).toBe(patient)
      expect(one.code.text).toMatch(/\S/)
      expect(one.effectiveDateTime ?? one.effectivePeriod).toBeDefined()
    }
    const quantities = within(bundle).filter(({ value, unit }) => typeof value === 'number' && unit !== undefined)
    expect(quantities.length).toBeGreaterThan(15)
    expect(quantities.filter(({ system }) => system !== 'http://unitsofmeasure.org')).toEqual([])
    expect(quantities.map(({ code }) => code).filter((code) => !ucum.test(code))).toEqual([])
  })

  it('reads each medicine for home: what, how much, at which hours, from when until when, ordered by whom', () => {
    expect(of('MedicationRequest').length).toBeGreaterThan(0)
    for (const order of of('MedicationRequest')) {
      expect(at(order.subject)).toBe(patient)
      expect(order.intent).toBe('order')
      expect(order.medicationCodeableConcept.coding[0].code).toMatch(/\S/)
      expect(at(order.requester).resourceType).toBe('Practitioner')
      for (const { timing, doseAndRate } of order.dosageInstruction) {
        const { timeOfDay, boundsPeriod, frequency } = timing.repeat
        expect(timeOfDay).toHaveLength(frequency)
        expect(Date.parse(boundsPeriod.end)).toBeGreaterThanOrEqual(Date.parse(boundsPeriod.start))
        expect(doseAndRate[0].doseQuantity.value).toBeGreaterThan(0)
      }
    }
  })

  it('knows from which journal all this was told, by whom, and when', () => {
    const origin = of('Provenance').find(({ entity }) => entity[0].role === 'source')
    expect(at(origin.target[0])).toBe(patient)
    expect(origin.recorded).toBe(bundle.timestamp)
    expect(at(origin.agent[0].who).resourceType).toBe('Organization')
    expect(origin.entity[0].what.identifier.value).toBe(bundle.identifier.value)
  })
})
