import type { ContactPoint, Reference } from 'fhir/r4'
import { systems } from '#content/exchange/fhir-codes.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { ContactRow } from '#core/journal/registers.ts'
import { animalsOf, patientUuid } from './animals.ts'
import { answer } from './concepts.ts'
import { derivedUuid, urn } from './naming.ts'
import type { Resource, ResourceType } from './written.ts'

/** The people of a case. Whoever is referred to is put among the resources; nobody else's name leaves the clinic. */
export type People = {
  readonly clinic: Reference
  person(id: string): Reference
  contact(id: string): Reference
  /** Everybody asked for so far, in the order of their ids. */
  resources(): Resource[]
}

export function peopleOf(file: CaseFile): People {
  const found = new Map<string, Resource>()
  const add = (resource: Resource & { id?: string | undefined }, display: string): Reference => {
    found.set(resource.id ?? '', resource)
    return { reference: urn(resource.id ?? ''), type: resource.resourceType, display }
  }
  const uuid = (...parts: readonly string[]) => derivedUuid(file.clinicId, ...parts)
  return {
    clinic: add(clinicResource(file, uuid('clinic')), file.clinic.name),
    person: (id) => {
      const row = file.people.get(id)
      if (!row) return unknownOne('Practitioner', id)
      const name = [{ text: row.name, suffix: row.letters === null ? [] : [row.letters] }]
      const identifier = [{ system: systems.ids, value: id }]
      return add({ resourceType: 'Practitioner', id: uuid('person', id), identifier, name }, row.name)
    },
    contact: (id) => {
      const row = file.contacts.get(id)
      if (!row) return unknownOne(undefined, id)
      const resource = contactResource(file, id, row, uuid)
      if (!resource) return unknownOne(undefined, id, row.name)
      if (row.kind === 'vet' && row.practice !== null) addPractice(id, row, row.practice)
      return add(resource, row.name)
    },
    resources: () => [...found].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, resource]) => resource),
  }

  function addPractice(id: string, row: ContactRow, practice: string): void {
    const organization = add(
      { resourceType: 'Organization', id: uuid('practice-of', id), name: practice, ...reachedBy(row) },
      practice,
    )
    const practitioner: Reference = { reference: urn(uuid('contact', id)), type: 'Practitioner', display: row.name }
    add({ resourceType: 'PractitionerRole', id: uuid('role-of', id), practitioner, organization }, row.name)
  }
}

/** Somebody whom no register knows: named by id only, and never made up. */
function unknownOne(type: ResourceType | undefined, id: string, name?: string): Reference {
  return { type, identifier: { system: systems.ids, value: id }, display: name ?? `‹${id}›` }
}

function clinicResource({ clinic, clinicId }: CaseFile, id: string): Resource {
  return {
    resourceType: 'Organization',
    id,
    identifier: [{ system: systems.ids, value: clinicId }],
    name: clinic.name,
    ...reachedBy(clinic),
  }
}

function contactResource(
  file: CaseFile,
  id: string,
  row: ContactRow,
  uuid: (...parts: readonly string[]) => string,
): Resource | undefined {
  const identifier = [{ system: systems.ids, value: id }]
  switch (row.kind) {
    case 'vet':
      return {
        resourceType: 'Practitioner',
        id: uuid('contact', id),
        identifier,
        name: [{ text: row.name }],
        ...reachedBy(row),
      }
    case 'laboratory':
      return { resourceType: 'Organization', id: uuid('contact', id), identifier, name: row.name, ...reachedBy(row) }
    case 'owner':
    case 'other': {
      const [animal] = animalsOf(file)
      if (animal === undefined) return undefined
      return {
        resourceType: 'RelatedPerson',
        id: derivedUuid(file.clinicId, file.stream, 'contact', id),
        identifier,
        patient: { reference: urn(patientUuid(file, animal)), type: 'Patient' },
        relationship: rolesOf(file, id).map(answer),
        name: [{ text: row.name }],
        ...reachedBy(row),
      }
    }
  }
}

/** What the household says of this person: owner, pays, nurses at home. */
function rolesOf({ theCase }: CaseFile, id: string): string[] {
  const roles = theCase
    .live('household')
    .flatMap(({ body }) => body.contacts.filter(({ contact }) => contact === id).flatMap(({ roles }) => roles))
  return [...new Set(roles)]
}

function reachedBy(row: { phone: string | null; email: string | null; address: readonly string[] }) {
  const telecom: ContactPoint[] = []
  if (row.phone !== null) telecom.push({ system: 'phone', value: row.phone })
  if (row.email !== null) telecom.push({ system: 'email', value: row.email })
  return {
    telecom,
    address: row.address.length === 0 ? [] : [{ text: row.address.join(', '), line: [...row.address] }],
  }
}
