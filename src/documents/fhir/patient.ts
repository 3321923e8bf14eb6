import type { Extension } from 'fhir/r4'
import { genderStatusCodes, speciesCodes, systems } from '#content/exchange/fhir-codes.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { animalOfLine, patientUuid } from './animals.ts'
import { publicCoding, words } from './concepts.ts'
import { dateOnly, dateTime } from './fhir-time.ts'
import type { People } from './people.ts'
import type { ResourceOf } from './written.ts'

/** The animal. Without an identity entry nothing is said but its id: no species is guessed. */
export function patientOf(
  file: CaseFile,
  animal: string,
  people: Pick<People, 'clinic' | 'contact'>,
): ResourceOf<'Patient'> {
  const { theCase } = file
  const identity = theCase.live('identity').findLast((line) => animalOfLine(line) === animal)?.body
  const death = theCase.live('death').findLast((line) => animalOfLine(line) === animal)
  const merges = theCase.live('merge').filter((line) => animalOfLine(line) === animal)
  const vet = identity?.referringVet ? people.contact(identity.referringVet) : undefined
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
    generalPractitioner: vet?.type === 'Practitioner' ? [vet] : [],
    managingOrganization: people.clinic,
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
