import { describe, expect, it } from 'vitest'
import { laboratoryTerms as terms } from '#content/exchange/laboratory-terms.ts'
import { readFhir } from './read-fhir.ts'

const loinc = 'http://loinc.org'
const drug = (id: string, name: string, more: object) => {
  return { resourceType: 'Observation', id, status: 'final', code: { text: name }, ...more }
}
const category = (code: string) => ({ interpretation: [{ coding: [{ code }] }] })

/** A report of an invented dog as a bundle; the organism's drugs are observations of their own. */
function bundle(change: { report?: object; organism?: object; more?: object[] } = {}) {
  const resources = [
    {
      resourceType: 'DiagnosticReport',
      id: 'r',
      status: 'final',
      identifier: [{ value: 'N-1' }],
      performer: [{ display: 'Northfold Laboratory' }],
      subject: { reference: 'Patient/p' },
      specimen: [{ reference: 'Specimen/s' }],
      issued: '2026-03-04T10:15:00Z',
      result: [{ reference: 'Observation/o' }],
      conclusion: 'Interpreted by CLSI VET01S ed7.',
      ...change.report,
    },
    {
      resourceType: 'Patient',
      id: 'p',
      identifier: [{ value: '985112001234567' }],
      name: [{ given: ['Bramble'], family: 'Okafor' }],
      extension: [
        {
          url: 'http://hl7.org/fhir/StructureDefinition/patient-animal',
          extension: [
            {
              url: 'species',
              valueCodeableConcept: { text: 'Canis lupus familiaris', coding: [{ code: '448771007' }] },
            },
          ],
        },
      ],
    },
    {
      resourceType: 'Specimen',
      id: 's',
      identifier: [{ value: 'B-1' }],
      type: { text: 'Swab' },
      collection: { collectedDateTime: '2026-03-01', bodySite: { text: 'Left middle ear' } },
    },
    {
      resourceType: 'Observation',
      id: 'o',
      status: 'final',
      code: { coding: [{ system: loinc, code: '634-6', display: 'Bacteria identified' }] },
      valueCodeableConcept: { text: 'Staphylococcus pseudintermedius', coding: [{ code: '427316000' }] },
      hasMember: [{ reference: 'Observation/a' }, { reference: 'Observation/b' }, { reference: 'Observation/c' }],
      ...change.organism,
    },
    drug('a', 'Cefazolin', { valueQuantity: { value: 2, comparator: '<=', unit: 'mg/L' }, ...category('S') }),
    drug('b', 'Enrofloxacin', { valueQuantity: { value: 18, unit: 'mm' } }),
    drug('c', 'D-test', { valueString: 'NEG' }),
    ...(change.more ?? []),
  ]
  return { resourceType: 'Bundle', type: 'collection', entry: resources.map((resource) => ({ resource })) }
}
const read = (value: object) => readFhir(JSON.stringify(value), terms)
const fault = (value: object) => {
  const found = read(value)
  return found.kind === 'refusal' ? [found.refusal.code, found.refusal.place.field] : null
}

describe('a FHIR report', () => {
  it('is read whole, with its animal, tube, ear, isolates and drugs', () => {
    const found = read(bundle())
    if (found.kind === 'refusal') throw new Error(JSON.stringify(found.refusal))
    expect(found.answer).toMatchObject([
      {
        laboratory: 'Northfold Laboratory',
        accession: 'N-1',
        label: 'B-1',
        animal: { name: 'Bramble', owner: 'Okafor', chip: '985112001234567', species: 'dog' },
        collected: '2026-03-01',
        site: 'Swab, Left middle ear',
        side: 'LEFT',
        status: 'final',
        growth: 'growth',
        standard: 'CLSI VET01S ed7',
        doubts: [],
        isolates: [
          {
            organism: 'Staphylococcus pseudintermedius',
            code: '427316000',
            drugs: [
              { drug: 'Cefazolin', value: '<=2', unit: 'mg/L', category: 'S' },
              { drug: 'Enrofloxacin', value: '18', unit: 'mm', category: null },
            ],
            tests: [{ test: 'd-test', result: 'negative' }],
          },
        ],
      },
    ])
  })

  it('may contain its observations, and may have grown nothing', () => {
    const none = {
      resourceType: 'DiagnosticReport',
      status: 'amended',
      contained: [
        { resourceType: 'Observation', id: 'o', status: 'final', code: { text: 'Culture' }, valueString: 'No growth' },
      ],
      result: [{ reference: '#o' }],
    }
    expect(read(none)).toMatchObject({
      answer: [{ status: 'corrected', growth: 'none', isolates: [], text: ['Culture: No growth'] }],
    })
  })

  it('that is wrong says where, and gives nothing', () => {
    expect(fault(bundle({ organism: { hasMember: [{ reference: 'Observation/z' }] } }))).toEqual([
      'parent-missing',
      'hasMember',
    ])
    expect(fault(bundle({ report: { status: 'entered-in-error' } }))).toEqual([
      'entered-in-error',
      'DiagnosticReport.status',
    ])
    expect(fault(bundle({ report: { status: 'constructor' } }))).toEqual(['status-unknown', 'DiagnosticReport.status'])
    const twice = { hasMember: [{ reference: 'Observation/a' }, { reference: 'Observation/a' }] }
    expect(fault(bundle({ organism: twice }))).toEqual(['drug-twice', 'Observation.code'])
    expect(fault({ resourceType: 'Patient' })).toEqual(['empty', 'resourceType'])
    expect(readFhir('{"resourceType": "Bun', terms)).toMatchObject({ refusal: { code: 'not-readable-text' } })
  })
})
