import { describe, expect, it } from 'vitest'
import { laboratoryTerms as terms } from '#content/exchange/laboratory-terms.ts'
import { drugOf } from '#core/laboratory/fhir/read-observation.ts'
import { readOru } from '#core/laboratory/hl7/read-oru.ts'

// Two lines of a susceptibility battery, copied on 30 November 2026 from the vectors SX086 and SX087; their layout is that
// of HL7 version 2.5.1, section 7.4.2 (OBX). Around them stand an invented order and culture.
const sx086 = 'OBX|7|SN|18908-4^Clindamycin^LN||<=^0.25|mg/L|||S|||F'
const sx087 = 'OBX|7|SN|18908-4^Clindamycin^LN||<=^0.25|mg/L||S|||F'

const around = [
  'MSH|^~\\&|LIS|Northfold Laboratory|||20260304||ORU^R01|1|P|2.5.1',
  'OBR|1|B-1|N-1|634-6^Bacteria identified^LN',
  'OBX|1|ST|634-6^Bacteria identified^LN|1|Staphylococcus pseudintermedius||||||F',
  'OBR|2|B-1|N-1|29576-6^Susceptibility^LN||||||||||||||||||||||634-6^1|||B-1^N-1',
]
const read = (line: string) => {
  const found = readOru([...around, line].join('\r'), terms)
  return found.kind === 'answer' ? found.answer[0]?.read : found
}

describe('the published line of a susceptibility battery', () => {
  it('is refused when its category stands in OBX-9 (SX086)', () => {
    expect(read(sx086)).toMatchObject({
      kind: 'refusal',
      refusal: { code: 'category-in-wrong-field', found: 'S', place: { line: 5, segment: 'OBX', field: 'OBX-9' } },
    })
  })

  it('gives drug, MIC, category and state when it stands in OBX-8 (SX087)', () => {
    const one = read(sx087)
    const report = one?.kind === 'answer' && 'status' in (one.answer[0] ?? {}) ? one.answer[0] : null
    expect(report).toMatchObject({
      status: 'final',
      isolates: [{ drugs: [{ drug: 'Clindamycin', value: '<=0.25', unit: 'mg/L', category: 'S' }] }],
    })
  })
})

// Vector SX088: the shape of the microbiology example of HL7 FHIR R4 (comparator, interpretation).
const sx088 = {
  resourceType: 'Observation',
  status: 'final',
  code: { coding: [{ system: 'http://loinc.org', code: '18878-9' }], text: 'Cefazolin' },
  valueQuantity: { value: 2, comparator: '<=', unit: 'mg/L' },
  interpretation: [
    { coding: [{ system: 'http://terminology.hl7.org/CodeSystem/v3-ObservationInterpretation', code: 'S' }] },
  ],
}

describe('the published FHIR observation of a drug', () => {
  it('gives drug, MIC and category (SX088)', () => {
    expect(drugOf(sx088, terms)).toMatchObject({
      drug: { drug: 'Cefazolin', code: '18878-9', value: '<=2', unit: 'mg/L', category: 'S' },
      doubts: [],
    })
  })
})
