import type { Reference } from 'fhir/r4'
import { systems } from '#content/exchange/fhir-codes.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf, Case, KindName, Line } from '#core/journal/fold.ts'
import { operationsOf } from '#core/owed/operations.ts'
import { animalOfLine, animalsOf, patientUuid } from './animals.ts'
import { entryUuid, urn } from './naming.ts'
import { type People, peopleOf } from './people.ts'
import type { Resource, ResourceType } from './written.ts'

/** What a mapping may ask about everything beside its own entry. */
export type Around = {
  readonly file: CaseFile
  /** The moment the bundle carries. */
  readonly on: string
  readonly people: People
  /** The entry that says an operation was done, by the operation's id. */
  readonly operations: ReadonlyMap<string, string>
  patient(line: OfLine): Reference
  author(line: OfLine): Reference
  /** The resource of another entry, in the version that counts now; `type` when only one type may stand there. */
  entry(id: string, type?: ResourceType): Reference
}
export type OfLine = Pick<Line<unknown>, 'header'>
/** One live entry of a kind to its resources; the first of them carries the id of the entry. */
export type Mapping<Name extends KindName> = (line: Line<BodyOf<Name>>, around: Around) => Resource[]

export function aroundOf(file: CaseFile, on: string): Around {
  const people = peopleOf(file)
  const animals = animalsOf(file)
  return {
    file,
    on,
    people,
    operations: new Map(operationsOf(file).flatMap(({ id, done }) => (done === null ? [] : [[id, done.by] as const]))),
    patient: (line) => {
      const animal = animalOfLine(line) ?? animals[0]
      return animal === undefined
        ? { type: 'Patient', display: 'not recorded' }
        : { reference: urn(patientUuid(file, animal)), type: 'Patient' }
    },
    author: ({ header: { author } }) => {
      switch (author.kind) {
        case 'person':
          return people.person(author.person)
        case 'owner-link':
        case 'referring-vet':
          return people.contact(author.contact)
        case 'import':
          return file.contacts.has(author.from) ? people.contact(author.from) : { display: author.from }
      }
    },
    entry: (id, type) => ({ reference: urn(entryUuid(currentOf(file.theCase, id))), type }),
  }
}

/** The end of a chain of corrections; a withdrawn correction does not count. */
export function currentOf(theCase: Case, id: string): string {
  const seen = new Set<string>()
  let current = id
  while (!seen.has(current)) {
    seen.add(current)
    const next = theCase.line(current)?.supersededBy.find((other) => theCase.line(other)?.state !== 'withdrawn')
    if (next === undefined) return current
    current = next
  }
  return current
}

/**
 * References to what is not in the bundle, or is of another type than may stand there, keep only the name of the
 * thing: a receiver finds no dead link.
 */
export function settleReferences(resource: Resource, types: ReadonlyMap<string, ResourceType>): Resource {
  return settle(resource, types) as Resource
}

function settle(value: unknown, types: ReadonlyMap<string, ResourceType>): unknown {
  if (Array.isArray(value)) return value.map((item) => settle(item, types))
  if (typeof value !== 'object' || value === null || Object.getPrototypeOf(value) !== Object.prototype) return value
  const { reference, type, ...rest } = value as Reference
  if (typeof reference === 'string' && reference.startsWith('urn:uuid:')) {
    const found = types.get(reference)
    const fits = found !== undefined && (type === undefined || type === found)
    if (fits) return { reference, type: found, ...rest }
    return { type, identifier: { system: systems.uri, value: reference }, ...rest }
  }
  return Object.fromEntries(Object.entries(value).map(([key, member]) => [key, settle(member, types)]))
}
