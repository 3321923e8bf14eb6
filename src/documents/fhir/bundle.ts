import type { Bundle } from 'fhir/r4'
import { systems } from '#content/exchange/fhir-codes.ts'
import { exchangeInEnglish as say } from '#content/wording/exchange.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { KindName, Line } from '#core/journal/fold.ts'
import type { Owed } from '#core/owed/owed-item.ts'
import { animalOfLine, animalsOf } from './animals.ts'
import { type Around, aroundOf, settleReferences } from './around.ts'
import { enteredInError } from './entered-in-error.ts'
import { mappings } from './mappings.ts'
import { derivedUuid, urn } from './naming.ts'
import { owedTasks } from './owed-tasks.ts'
import { patientOf } from './patient.ts'
import { originOf, provenanceOf } from './provenance.ts'
import { type Resource, type ResourceType, type Written, writeJson } from './written.ts'

export const fhirVersion = '4.0.1'

/**
 * The case as one FHIR R4 bundle of the type `collection`: the animal, the people, every entry that counts in the
 * order it happened, what is owed at `on`, from which journal it is told, and who corrected what. Nothing stands in it that no entry says.
 *
 * @example fhirBundle(file, owedOf(file, procedures, { rules: owedRules }), '2026-03-05T16:00:00.000Z')
 */
export function fhirBundle(file: CaseFile, owed: Owed, on: string): string {
  const around = aroundOf(file, on)
  nameOwners(around)
  const told = file.theCase.lines.flatMap((line) => resourcesOf(line, around))
  const after = [...owedTasks(owed, around), ...originOf(around), ...provenanceOf(around)].map((one): Resource => one)
  const patients = animalsOf(file).map((animal): Resource => {
    const patient = patientOf(file, animal, around.people)
    const lines = [...file.theCase.live('identity'), ...file.theCase.live('death')]
    const disputed = lines.some((line) => animalOfLine(line) === animal && isDisputed(line, file))
    return disputed ? sideBySide(patient) : patient
  })
  const resources = [...patients, ...around.people.resources(), ...told, ...after]
  return `${writeJson(bundleOf(file, on, resources))}\n`
}

/** The owner is told of even where no entry speaks with them; other contacts only where one does. */
function nameOwners({ file, people }: Around): void {
  for (const { body } of file.theCase.live('household')) {
    for (const { contact, roles } of body.contacts) if (roles.includes('owner')) people.contact(contact)
  }
}

function bundleOf({ clinicId, stream }: CaseFile, on: string, resources: readonly Resource[]): Written<Bundle> {
  const nameOf = ({ id = '' }: Resource) => urn(id)
  const types = new Map<string, ResourceType>(resources.map((one) => [nameOf(one), one.resourceType]))
  const entry = resources.map((one) => ({ fullUrl: nameOf(one), resource: settleReferences(one, types) }))
  return {
    resourceType: 'Bundle',
    id: derivedUuid(clinicId, stream, 'bundle'),
    meta: { tag: [{ system: systems.local, code: 'fhir-version', display: fhirVersion }] },
    identifier: { system: systems.ids, value: `${clinicId}/${stream}` },
    type: 'collection',
    timestamp: on,
    entry,
  } as Written<Bundle>
}

/** What an entry says now; a withdrawn one only as entered in error; a superseded or erased one not at all. */
function resourcesOf(line: Line, around: Around): Resource[] {
  if (line.state === 'superseded' || line.erased || !line.known) return []
  const mapping = mappings[line.header.kind as KindName]
  if (mapping === undefined || typeof mapping === 'string') return []
  const made = (mapping as (line: Line, around: Around) => Resource[])(line, around)
  if (line.state === 'withdrawn') return made.flatMap((resource) => enteredInError(resource) ?? [])
  return isDisputed(line, around.file) ? made.map(sideBySide) : made
}

function isDisputed({ header }: Pick<Line<unknown>, 'header'>, { theCase }: CaseFile): boolean {
  return theCase.conflicts.some(({ between }) => between.includes(header.id))
}

function sideBySide(resource: Resource): Resource {
  return { ...resource, meta: { tag: [{ system: systems.local, code: 'side-by-side', display: say.sideBySide }] } }
}
