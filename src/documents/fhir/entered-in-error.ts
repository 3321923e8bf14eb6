import type { Resource } from './written.ts'

/**
 * What a withdrawn entry said, marked as entered in error for receivers who have it already. Undefined where R4 has no
 * such mark: then only the provenance says that the entry was taken back.
 */
export function enteredInError(resource: Resource): Resource | undefined {
  switch (resource.resourceType) {
    case 'AllergyIntolerance': {
      const { clinicalStatus: _, verificationStatus, ...rest } = resource
      const coding = verificationStatus?.coding?.map((one) => ({ ...one, code: 'entered-in-error' }))
      return { ...rest, verificationStatus: { coding } }
    }
    case 'Consent':
    case 'CarePlan':
    case 'Communication':
    case 'DiagnosticReport':
    case 'ImagingStudy':
    case 'MedicationAdministration':
    case 'MedicationRequest':
    case 'MedicationStatement':
    case 'Observation':
    case 'Procedure':
    case 'QuestionnaireResponse':
    case 'ServiceRequest':
    case 'Specimen':
    case 'ClinicalImpression':
      return { ...resource, status: 'entered-in-error' }
    default:
      return undefined
  }
}
