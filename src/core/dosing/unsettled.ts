import type { Drug } from '#core/formulary/drug.ts'
import type { Group } from '#core/formulary/words.ts'
import type { Quantity } from '#core/units/quantity.ts'
import { stillCounts } from './elapsed.ts'
import { saidOf } from './exclusions.ts'
import { type DoseFinding, found } from './findings.ts'
import { drugsGiven } from './given-drug.ts'
import { waitLeft } from './interactions.ts'
import type { DoseRequest, Given } from './request.ts'
import type { Interaction } from './rules.ts'

/** Pairs that a person has to settle before the drug is given; the others are only worth a thought. */
const asked: readonly Interaction['code'][] = ['nsaid-with-steroid', 'two-nsaids']

/**
 * What was given and may hold a steroid or an NSAID, when this drug must not meet one: the ear drops, the injection of
 * last week, the white tablet. Silence about an active is a question, never a "no".
 *
 * @example judgeUnsettled(meloxicam, { given: [{ drug: 'Ear drops', unsettled: { route: 'ear' } }], ... }, drugs, pairs)
 */
export function judgeUnsettled(
  drug: Drug,
  request: DoseRequest,
  drugs: readonly Drug[],
  interactions: readonly Interaction[],
): DoseFinding[] {
  const mine = interactions.filter(({ code, between }) => asked.includes(code) && meets(drug, between))
  const washouts = mine.flatMap((interaction) => interaction.washouts)
  const whole = longestOf(washouts)
  if (!whole) return []
  // Drops and ointments hold none of the drugs that are swallowed and last on their own: the class counts.
  const ofClass = longestOf(washouts.filter(({ drug: own }) => own === undefined)) ?? whole
  const windowOf = ({ onSurface }: Given) => (onSurface ? ofClass : whole)
  const because = [...new Set(mine.map((interaction) => interaction.because))].join('; ')
  return request.given
    .filter((given) => isOpen(given, drugs) && (isDepot(given) || stillCounts(given.at, request.at, windowOf(given))))
    .map((given) => {
      const route = given.unsettled ? ` (${given.unsettled.route})` : ''
      const left = isDepot(given) ? 'a depot lasts for weeks' : waitLeft(given, request, windowOf(given))
      const about = { given: `${saidOf(given)}${route}`, drug: drug.name, because, left }
      return found('confirm', 'given-active-unknown', about, mine)
    })
}

function meets(drug: Drug, between: Interaction['between']): boolean {
  return between.some((group) => drug.groups.includes(group))
}

function longestOf(washouts: Interaction['washouts']): Quantity<'h'> | undefined {
  return washouts.reduce<Quantity<'h'> | undefined>(later, undefined)
}

function later(longest: Quantity<'h'> | undefined, washout: { readonly value: Quantity<'h'> }): Quantity<'h'> {
  return longest?.value.gte(washout.value.value) ? longest : washout.value
}

/**
 * Nobody settled the active, and what is written names neither a steroid nor an NSAID of ours. That drops are called
 * after their antibiotic does not say what else is in them.
 */
function isOpen(given: Given, drugs: readonly Drug[]): boolean {
  const named = drugsGiven(drugs, given.drug)
  if (!given.unsettled) return named.length === 0
  return !named.some(({ groups }) => groups.some((group) => answering.has(group)))
}

/** An active of one of these groups answers the question: it is judged as what it is. */
const answering: ReadonlySet<Group> = new Set(['nsaid', 'steroid', 'depot-steroid'])

/** A depot lasts for weeks; how long is not known, so it is asked about at any age. */
function isDepot(given: Given): boolean {
  return given.unsettled?.route === 'depot-injection'
}
