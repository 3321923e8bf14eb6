import type { Side } from '#core/animal/species.ts'
import type { ReportedAnimal } from '../report.ts'
import { type LaboratoryTerms, sideCoded, sideIn, termOf } from '../terms.ts'
import { codedText, component, componentOf, repetitions } from './fields.ts'
import type { Order, Patient } from './orders.ts'
import { readTime } from './read-time.ts'

const nobody: ReportedAnimal = { name: null, owner: null, chip: null, species: null, speciesPrinted: null, born: null }

/** The animal of a message: its own name stands as the given name and its owner's as the family name. */
export function animalIn({ pid, kin }: Patient, terms: LaboratoryTerms): ReportedAnimal {
  if (!pid) return nobody
  const [family, given] = [component(pid, 5), component(pid, 5, 2)]
  const numbers = [2, 3, 4, 19].flatMap((field) =>
    repetitions(pid, field).flatMap((one) => componentOf(one, 1, pid.delimiters) ?? []),
  )
  const chips = [...new Set(numbers.filter((number) => /^\d{15}$/.test(number)))]
  const [relative] = kin
  const named = relative ? [component(relative, 2, 2), component(relative, 2)].filter((part) => part !== null) : []
  const printed = component(pid, 35, 2) ?? component(pid, 35)
  const codes = [component(pid, 35), component(pid, 35, 2)].flatMap((one) => one?.toLowerCase() ?? [])
  return {
    name: (given ?? family)?.slice(0, 300) ?? null,
    owner: (named.length > 0 ? named.join(' ') : given === null ? null : family)?.slice(0, 300) ?? null,
    chip: chips.length === 1 ? (chips[0] ?? null) : null,
    species: codes.flatMap((one) => termOf(terms.species, one) ?? [])[0] ?? null,
    speciesPrinted: printed,
    born: readTime(pid, 7),
  }
}

/** Where the specimen came from: named in SPM, before version 2.5 in OBR-15. */
export function siteIn(orders: readonly Order[], terms: LaboratoryTerms): { site: string | null; sides: Side[] } {
  const places = orders.flatMap(({ specimens, obr }) => [
    ...specimens.map((spm) => ({
      words: [4, 8].map((field) => codedText(spm, field)),
      coded: [component(spm, 9), component(spm, 9, 2)],
    })),
    { words: [1, 3, 4].map((part) => component(obr, 15, part)), coded: [component(obr, 15, 5)] },
  ])
  const words = places.flatMap((one) => one.words.filter((word) => word !== null))
  const found = places.flatMap((one) => [
    ...one.coded.map((word) => (word === null ? null : sideCoded(word, terms))),
    ...one.words.map((word) => (word === null ? null : sideIn(word, terms))),
  ])
  const sides = found.flatMap((one): Side[] => (one === null ? [] : one === 'BOTH' ? ['LEFT', 'RIGHT'] : [one]))
  return { site: [...new Set(words)].join(', ').slice(0, 300) || null, sides: [...new Set(sides)] }
}
