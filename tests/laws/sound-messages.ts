import { writeOru } from '#core/laboratory/hl7/write-oru.ts'
import type { LaboratoryReport, ReportedDrug } from '#core/laboratory/report.ts'
import { writeTable } from '#core/laboratory/write-table.ts'

const place = { line: 0, segment: null, field: null }
const drug = (name: string, value: string, category: string | null): ReportedDrug => {
  return { drug: name, code: null, value, unit: 'mg/L', disk: null, category, place }
}

/** An invented report with two isolates; what is spoilt is made from it. */
const report: LaboratoryReport = {
  laboratory: 'Northfold Laboratory',
  accession: 'NL-26-00417',
  label: 'B-1',
  animal: {
    name: 'Bramble',
    owner: 'Okafor',
    chip: '985112001234567',
    species: 'dog',
    speciesPrinted: 'dog',
    born: '2019-05-04',
  },
  collected: '2026-03-01T14:20',
  reported: '2026-03-04T10:15',
  site: 'bulla & canal',
  side: 'LEFT',
  status: 'final',
  growth: 'growth',
  standard: null,
  isolates: [
    {
      key: '1',
      organism: 'Staphylococcus pseudintermedius',
      code: '427316000',
      amount: 'heavy',
      drugs: [
        drug('clindamycin', '<=0.25', 'S'),
        drug('amoxicillin-clavulanate', '>=4/2', 'R'),
        drug('marbofloxacin', '0.5', null),
      ],
      tests: [{ test: 'd-test', result: 'negative' }],
    },
    {
      key: '2',
      organism: 'Pseudomonas aeruginosa',
      code: null,
      amount: null,
      drugs: [drug('gentamicin', '2', 'S')],
      tests: [],
    },
  ],
  text: ['Heavy growth; "see" smear.'],
  doubts: [],
}

export const soundMessage = writeOru(report)
export const soundTable = writeTable([report, { ...report, accession: 'NL-26-00418', side: 'RIGHT' }])

export const soundFhir = JSON.stringify({
  resourceType: 'DiagnosticReport',
  status: 'final',
  identifier: [{ value: 'NL-26-00417' }],
  contained: [
    {
      resourceType: 'Observation',
      id: 'o',
      status: 'final',
      code: { text: 'Culture' },
      valueString: 'Pseudomonas aeruginosa',
      hasMember: [{ reference: '#a' }],
    },
    {
      resourceType: 'Observation',
      id: 'a',
      status: 'final',
      code: { text: 'gentamicin' },
      valueQuantity: { value: 2, comparator: '<=', unit: 'mg/L' },
    },
  ],
  result: [{ reference: '#o' }],
})
