import type { Source } from '#core/evidence/sourced.ts'

export const hl7FhirR4 = {
  id: 'hl7-fhir-r4',
  citation:
    'HL7 FHIR Release 4 (4.0.1), 2019: resource pages, patient-animal extension, animal-genderstatus and observation-vitalsignresult value sets',
  seenAt: 'pages of hl7.org/fhir and its earlier and later editions',
  strength: 'guideline',
} as const satisfies Source
