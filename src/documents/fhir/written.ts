import type {
  AdverseEvent,
  AllergyIntolerance,
  CarePlan,
  ClinicalImpression,
  Communication,
  Consent,
  DiagnosticReport,
  ImagingStudy,
  MedicationAdministration,
  MedicationRequest,
  MedicationStatement,
  Observation,
  Organization,
  Patient,
  Practitioner,
  PractitionerRole,
  Procedure,
  Provenance,
  QuestionnaireResponse,
  RelatedPerson,
  ServiceRequest,
  Specimen,
  Task,
} from 'fhir/r4'

/** A decimal with the digits a person wrote: `18.60` stays `18.60`, which FHIR counts as precision. */
export class ExactNumber {
  readonly digits: string

  constructor(digits: string) {
    if (!/^-?(0|[1-9]\d*)(\.\d+)?$/.test(digits)) throw new Error(`"${digits}" is not a JSON decimal.`)
    this.digits = digits
  }
}

/** The published R4 shape of a type, with exact numbers wherever it wants a number. */
export type Written<T> = T extends number ? T | ExactNumber : T extends object ? { [K in keyof T]: Written<T[K]> } : T

type Any =
  | AdverseEvent
  | AllergyIntolerance
  | CarePlan
  | ClinicalImpression
  | Communication
  | Consent
  | DiagnosticReport
  | ImagingStudy
  | MedicationAdministration
  | MedicationRequest
  | MedicationStatement
  | Observation
  | Organization
  | Patient
  | Practitioner
  | PractitionerRole
  | Procedure
  | Provenance
  | QuestionnaireResponse
  | RelatedPerson
  | ServiceRequest
  | Specimen
  | Task

/** Each resource that a case is told in. */
export type Resource = Written<Any>
export type ResourceOf<Type extends Any['resourceType']> = Written<Extract<Any, { resourceType: Type }>>
export type ResourceType = Any['resourceType']

/** FHIR forbids the control characters below 32 except tab and line ends; half a character is no text at all. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is taken out.
const forbidden = /[\u0000-\u0008\u000b\u000c\u000e-\u001f]|\p{Surrogate}/gu

/**
 * JSON text of FHIR, two spaces deep, what fits on a line on one line: exact numbers by their digits, nothing for what is undefined or empty (FHIR has
 * no empty strings, arrays or objects).
 */
export function writeJson(value: unknown, indent = ''): string {
  return writeMember(value, indent) ?? 'null'
}

function writeMember(value: unknown, indent: string): string | undefined {
  if (value === undefined || value === null || value === '') return undefined
  if (value instanceof ExactNumber) return value.digits
  if (typeof value === 'string') return JSON.stringify(value.replace(forbidden, '\ufffd'))
  if (typeof value !== 'object') return JSON.stringify(value)
  const inner = `${indent}  `
  const list = Array.isArray(value)
  const parts = list
    ? value.map((item) => writeMember(item, inner))
    : Object.entries(value).map(([key, member]) => {
        const text = writeMember(member, inner)
        return text === undefined ? undefined : `${JSON.stringify(key)}: ${text}`
      })
  const kept = parts.filter((part) => part !== undefined)
  if (kept.length === 0) return undefined
  const [open, close] = list ? ['[', ']'] : ['{', '}']
  const line = list ? `[${kept.join(', ')}]` : `{ ${kept.join(', ')} }`
  if (line.length <= 100 && !line.includes('\n')) return line
  return `${open}\n${inner}${kept.join(`,\n${inner}`)}\n${indent}${close}`
}
