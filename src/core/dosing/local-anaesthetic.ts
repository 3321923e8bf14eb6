import type { Species } from '#core/animal/species.ts'
import type { Provenance } from '#core/evidence/sourced.ts'
import { type Drug, localLimit } from '#core/formulary/drug.ts'
import type { Use } from '#core/formulary/words.ts'
import { type AnyQuantity, convert, Decimal, Quantity } from '#core/units/quantity.ts'
import { stillCounts } from './elapsed.ts'
import { massGiven } from './exclusions.ts'
import { drugsGiven } from './given-drug.ts'
import type { DoseRequest, Given } from './request.ts'
import { listsStrength } from './volume.ts'

/** One site, splash, catheter or infusion, as a share of the animal's one limit. */
export type CeilingPart = {
  readonly kind: 'given' | 'planned' | 'infusion'
  readonly drug: string
  readonly line?: string
  readonly mass: Quantity<'mg'>
  readonly limit: Quantity<'mg'>
  readonly fraction: Decimal
  /** False when the line was refused because there was no room left for it. */
  readonly counted: boolean
}

export type Ceiling = {
  readonly group: 'local-anaesthetic'
  /** Everything asked for and given, refused lines included: the sum a person would otherwise reach. */
  readonly used: Decimal
  /** What remains after the refusals; never above the limit unless more had been given already. */
  readonly granted: Decimal
  readonly limit: Decimal
  /** Intravenous infusion, counted apart. */
  readonly infusion: Decimal
  readonly parts: readonly CeilingPart[]
  readonly sources: readonly Provenance[]
}

export const one = new Decimal(1)

/**
 * A mass as a share of this drug's limit in this animal. Shares of different drugs add up, because their
 * toxicity is taken to add up.
 *
 * @example shareOf(bupivacaine, 'dog', quantity('8.2', 'mg'), quantity('8.2', 'kg')).fraction // 0.5 of 2 mg/kg
 */
export function shareOf(
  drug: Drug,
  species: Species,
  mass: Quantity<'mg'>,
  weight: Quantity<'kg'>,
  formulation?: string,
): { readonly limit: Quantity<'mg'>; readonly fraction: Decimal } | undefined {
  const limit = localLimit(drug, formulation)?.limits[species].value
  if (!limit) return undefined
  const most = new Quantity(limit.value.times(weight.value), 'mg')
  return { limit: most, fraction: mass.value.div(most.value) }
}

/** How long an infusion is counted back: its washout, or shorter when it runs for less. */
export function massOfInfusion(
  drug: Drug,
  perHour: AnyQuantity,
  over: Quantity<'min'> | undefined,
): Quantity<'mg'> | undefined {
  const rate = convert(perHour, 'mg/h')
  const washout = drug.localAnaesthetic?.washout.value
  if (!rate || !washout) return undefined
  const hours = over ? Decimal.min(washout.value, over.value.div(60)) : washout.value
  return new Quantity(rate.value.times(hours), 'mg')
}

/** An infusion into a vein is a line of its own; a wound catheter counts with the blocks. */
export function isInfusionIntoVein(use: Use | undefined): boolean {
  return use === 'cri'
}

/** What was given and has not worn off; `uncounted` are those whose milligrams nobody wrote down. */
export function givenParts(
  request: DoseRequest,
  drugs: readonly Drug[],
  weight: Quantity<'kg'>,
): { readonly parts: readonly CeilingPart[]; readonly uncounted: readonly Given[] } {
  const parts: CeilingPart[] = []
  const uncounted: Given[] = []
  for (const given of request.given) {
    const named = drugsGiven(drugs, given.drug).filter((drug) => countsStill(drug, given, request))
    const [drug] = named
    if (!drug) {
      if (mayBeOne(given, request, drugs)) uncounted.push(given)
      continue
    }
    // How a mixture divides between two local anaesthetics is not known, so it is not counted by guess.
    const mass = named.length === 1 ? massGiven(given) : undefined
    const share = mass && shareOf(drug, request.animal.species, mass, weight, formulationGiven(drug, given))
    if (!mass || !share) {
      uncounted.push(given)
      continue
    }
    const kind = isInfusionIntoVein(given.use) ? 'infusion' : 'given'
    parts.push({ kind, drug: drug.id, mass, ...share, counted: true })
  }
  return { parts, uncounted }
}

/**
 * A name of nobody's formulary that ends like the name of every local anaesthetic (the stem -caine of the international
 * names; product names follow it): nobody knows what it takes, for as long as the longest of ours counts.
 */
function mayBeOne(given: Given, request: DoseRequest, drugs: readonly Drug[]): boolean {
  // A drop on the eye before a tear test takes nothing of the ceiling that anybody could count.
  if (given.route === 'topical-eye' || !/caine\b/iu.test(given.drug) || drugsGiven(drugs, given.drug).length > 0)
    return false
  const washouts = drugs.flatMap(({ localAnaesthetic }) => localAnaesthetic?.washout.value ?? [])
  return washouts.some((washout) => stillCounts(given.at, request.at, washout))
}

function countsStill(drug: Drug, given: Given, request: DoseRequest): boolean {
  const limit = localLimit(drug, formulationGiven(drug, given))
  return limit !== undefined && stillCounts(given.at, request.at, limit.washout.value)
}

/**
 * A formulation of its own is known by its strength, or by its first word in what was written ("bupivacaine liposomal");
 * without either the usual product is counted, whose limit is lower.
 */
function formulationGiven(drug: Drug, { drug: written, stock }: Given): string | undefined {
  return drug.doses.find((row) => {
    const [word] = row.formulation?.split(',') ?? []
    if (word === undefined) return false
    return (stock && listsStrength(row, stock)) || written.toLowerCase().includes(word.toLowerCase())
  })?.formulation
}

export function sumOf(parts: readonly CeilingPart[], keep: (part: CeilingPart) => boolean): Decimal {
  return parts.filter(keep).reduce((sum, part) => sum.plus(part.fraction), new Decimal(0))
}
