import type { Side } from '#core/animal/species.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { sideOf } from '#core/owed/specimen-loop.ts'
import { editionById } from './editions.ts'
import type { SusceptibilityFacts } from './facts.ts'
import { factsOfHouse } from './house-facts.ts'
import { methicillinName } from './methicillin.ts'
import { organismById } from './organism.ts'
import { readIsolates } from './read-isolates.ts'
import { judgedBy, requestOf } from './read-report.ts'
import type { IsolateReading, Phenotype } from './reading.ts'

/** A resistant organism that passes between animals and people: it asks for hygiene whatever drug is chosen. */
export type Carriage = {
  readonly kind: 'methicillin-resistant' | 'esbl' | 'carbapenemase'
  /** `MRSP`, `ESBL`; of a staphylococcus without a short name: `MR` and its name. */
  readonly name: string
  readonly organism: string
  /** False while a test that would settle it is missing: then the same is done, and it is said so. */
  readonly sure: boolean
  readonly side: Side | null
  readonly result: string
  readonly at: string
}

/**
 * What reports that count have found of such organisms, oldest first; each report by the edition it was judged by. It
 * never ends by itself: an animal may carry them for months after the ear has healed.
 *
 * @example carriagesOf(file, susceptibility).map(({ name }) => name) // ['MRSP']
 */
export function carriagesOf(
  { theCase, ...clinic }: Pick<CaseFile, 'theCase' | 'house' | 'people'>,
  ofContent: SusceptibilityFacts,
): Carriage[] {
  const facts = factsOfHouse(clinic, ofContent)
  const host = theCase.latest('identity')?.body.species
  if (!host) return []
  return theCase.live('specimen-result').flatMap(({ header, body, at }) => {
    if (body.isolates.length === 0) return []
    // An edition that is not held any more is no reason to be silent here: then that of the house is asked.
    const judged = judgedBy({ theCase }, header.id)
    const edition = facts.editions.find(({ id }) => id === judged) ?? editionById(facts.editions, facts.usual)
    const readings = readIsolates(requestOf(body, host, edition, facts), facts)
    const side = sideOf({ header })
    return readings.flatMap((reading) =>
      carriagesIn(reading, facts).map((found) => ({ ...found, side, result: header.id, at })),
    )
  })
}

type Found = Pick<Carriage, 'kind' | 'name' | 'organism' | 'sure'>

function carriagesIn({ organism: id, phenotype }: IsolateReading, facts: SusceptibilityFacts): Found[] {
  const organism = organismById(facts.organisms, id)
  if (!organism) return []
  const { methicillinResistant, esbl, carbapenemase } = phenotype
  const found = (kind: Carriage['kind'], name: string, sure: boolean): Found => {
    return { kind, name, organism: organism.name, sure }
  }
  const methicillin = staphylococcal[methicillinResistant]
  return [
    ...(methicillin === null
      ? []
      : [found('methicillin-resistant', methicillinName(organism, facts.rules.methicillin), methicillin === 'sure')]),
    ...(esbl === 'confirmed' || esbl === 'screen-positive' ? [found('esbl', 'ESBL', esbl === 'confirmed')] : []),
    ...(carbapenemase === 'suspected' ? [found('carbapenemase', 'carbapenemase', false)] : []),
  ]
}

const staphylococcal: Readonly<Record<Phenotype['methicillinResistant'], 'sure' | 'maybe' | null>> = {
  yes: 'sure',
  presumed: 'sure',
  possible: 'maybe',
  no: null,
  'not-tested': null,
  'not-applicable': null,
}

/** The names, each once, in the order they were found: what a line has room for. */
export function namesOfCarriages(carriages: readonly Carriage[]): string {
  return [...new Set(carriages.map(({ name }) => name))].join(', ')
}
