import type { Species } from '#core/animal/species.ts'
import type { Sourced } from '#core/evidence/sourced.ts'

/** One code of a public code system, and how it is shown to a person. */
export type PublicCode = { readonly code: string; readonly display: string }

const checked = '2026-11-25'
const read = { known: 'read', strength: 'guideline', confidence: 'high', checked } as const
const remembered = { known: 'remembered', strength: 'guideline', confidence: 'medium', checked } as const
const vitalSigns = {
  sources: ['loinc', 'hl7-fhir-r4'],
  where: 'value set observation-vitalsignresult',
  ...read,
} as const

/** Made for people: the species travels with the animal, never with these codes. */
export const loincCodes = {
  weight: { value: { code: '29463-7', display: 'Body weight' }, ...vitalSigns },
  'heart-rate': { value: { code: '8867-4', display: 'Heart rate' }, ...vitalSigns },
  'respiratory-rate': { value: { code: '9279-1', display: 'Respiratory rate' }, ...vitalSigns },
  temperature: { value: { code: '8310-5', display: 'Body temperature' }, ...vitalSigns },
  'oxygen-saturation': { value: { code: '2708-6', display: 'Oxygen saturation in Arterial blood' }, ...vitalSigns },
  'blood-pressure': {
    value: { code: '85354-9', display: 'Blood pressure panel with all children optional' },
    ...vitalSigns,
  },
  systolic: { value: { code: '8480-6', display: 'Systolic blood pressure' }, ...vitalSigns },
  diastolic: { value: { code: '8462-4', display: 'Diastolic blood pressure' }, ...vitalSigns },
  mean: { value: { code: '8478-0', display: 'Mean blood pressure' }, sources: ['loinc'], ...remembered },
} as const satisfies Record<string, Sourced<PublicCode>>

export const speciesCodes = {
  dog: { value: { code: '9615', display: 'Canis lupus familiaris' }, sources: ['ncbi-taxonomy'], ...remembered },
  cat: { value: { code: '9685', display: 'Felis catus' }, sources: ['ncbi-taxonomy'], ...remembered },
} as const satisfies Record<Species, Sourced<PublicCode>>

const animalPage = { sources: ['hl7-fhir-r4'], where: 'code system animal-genderstatus', ...read } as const
export const genderStatusCodes = {
  yes: { value: { code: 'neutered', display: 'Neutered' }, ...animalPage },
  no: { value: { code: 'intact', display: 'Intact' }, ...animalPage },
  unknown: { value: { code: 'unknown', display: 'Unknown' }, ...animalPage },
} as const satisfies Record<'yes' | 'no' | 'unknown', Sourced<PublicCode>>

/** DICOM modalities; of radiographs the entry does not say whether they are film, plates or digital. */
export const modalityCodes = {
  CT: { value: { code: 'CT', display: 'Computed Tomography' }, sources: ['hl7-fhir-r4'], ...remembered },
  MRI: { value: { code: 'MR', display: 'Magnetic Resonance' }, sources: ['hl7-fhir-r4'], ...remembered },
} as const satisfies Record<string, Sourced<PublicCode>>

/** Names of code systems; `local` is ours and stands in no registry. */
export const systems = {
  local: 'urn:quiet-ear:codes',
  ids: 'urn:quiet-ear:ids',
  planFingerprint: 'urn:quiet-ear:plan-fingerprint',
  uri: 'urn:ietf:rfc:3986',
  loinc: 'http://loinc.org',
  ucum: 'http://unitsofmeasure.org',
  species: 'http://www.ncbi.nlm.nih.gov/taxonomy',
  genderStatus: 'http://hl7.org/fhir/animal-genderstatus',
  animal: 'http://hl7.org/fhir/StructureDefinition/patient-animal',
  absent: 'http://terminology.hl7.org/CodeSystem/data-absent-reason',
  observationCategory: 'http://terminology.hl7.org/CodeSystem/observation-category',
  interpretation: 'http://terminology.hl7.org/CodeSystem/v3-ObservationInterpretation',
  dataOperation: 'http://terminology.hl7.org/CodeSystem/v3-DataOperation',
  consentScope: 'http://terminology.hl7.org/CodeSystem/consentscope',
  diagnosticService: 'http://terminology.hl7.org/CodeSystem/v2-0074',
  allergyClinical: 'http://terminology.hl7.org/CodeSystem/allergyintolerance-clinical',
  allergyVerification: 'http://terminology.hl7.org/CodeSystem/allergyintolerance-verification',
  provenanceAgent: 'http://terminology.hl7.org/CodeSystem/provenance-participant-type',
  participation: 'http://terminology.hl7.org/CodeSystem/v3-ParticipationType',
  adverseOutcome: 'http://terminology.hl7.org/CodeSystem/adverse-event-outcome',
  modality: 'http://dicom.nema.org/resources/ontology/DCM',
  dicomUid: 'urn:dicom:uid',
  /** ISO 11784/11785 transponder numbers have no FHIR system that we read of; the name is ours. */
  chip: 'urn:quiet-ear:iso-11784-chip',
} as const
