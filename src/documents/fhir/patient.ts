import type { Extension } from 'fhir/r4'
import { genderStatusCodes, speciesCodes, systems } from '#content/exchange/fhir-codes.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { publicCoding, words } from './concepts.ts'
import { dateOnly, dateTime } from './fhir-time.ts'
import { derivedUuid } from './naming.ts'
import type { ResourceOf } from './written.ts'

export function patientUuid(file: CaseFile, animal: string): string {
  return derivedUuid(file.clinicId, file.stream, 'animal', animal)
}

export function animalOfLine({ header: { subject } }: Pick<Line<unknown>, 'header'>): string | null {
  return 'animal' in subject ? subject.animal : null
}

/** Every animal that an entry of the case is about; one, unless something was filed wrongly. */
export function animalsOf({ theCase }: CaseFile): string[] {
  const found = theCase.lines.flatMap((line) => animalOfLine(line) ?? [])
  return [...new Set(found)]
}

/** The animal. Without an identity entry nothing is said but its id: no species is guessed. */
export function patientOf(file: CaseFile, animal: string): ResourceOf<'Patient'> {
  const { theCase } = file
  const identity = theCase.live('identity').findLast((line) => animalOfLine(line) === animal)?.body
  const death = theCase.live('death').findLast((line) => animalOfLine(line) === animal)
  const merges = theCase.live('merge').filter((line) => animalOfLine(line) === animal)
  return {
    resourceType: 'Patient',
    id: patientUuid(file, animal),
    extension: identity ? [animalExtension(identity)] : [],
    identifier: [
      { system: systems.ids, value: animal },
      ...(identity?.chip ? [{ type: words('Microchip, ISO 11784'), system: systems.chip, value: identity.chip }] : []),
    ],
    name: identity ? [{ text: identity.name }] : [],
    gender: identity?.sex,
    birthDate: identity?.born ? dateOnly(identity.born) : undefined,
    deceasedDateTime: death ? dateTime(death.header.happenedAt) : undefined,
    link: merges.map(({ body }) => ({
      other: { type: 'Patient', identifier: { system: systems.ids, value: body.otherAnimal } },
      type: 'seealso',
    })),
  }
}

function animalExtension({ species, breed, neutered }: BodyOf<'identity'>): Extension {
  const part = (url: string, valueCodeableConcept: Extension['valueCodeableConcept']): Extension => ({
    url,
    valueCodeableConcept,
  })
  const gender = genderStatusCodes[neutered]
  return {
    url: systems.animal,
    extension: [
      part('species', { coding: [publicCoding(systems.species, speciesCodes[species])], text: species }),
      ...(breed === null ? [] : [part('breed', { text: breed })]),
      part('genderStatus', { coding: [publicCoding(systems.genderStatus, gender)], text: gender.value.display }),
    ],
  }
}
