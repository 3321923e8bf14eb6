import type { Drug } from '#core/formulary/drug.ts'
import { Decimal, plain, Quantity } from '#core/units/quantity.ts'
import { hoursBetween, stillCounts } from './elapsed.ts'
import { saidOf } from './exclusions.ts'
import { type DoseFinding, found } from './findings.ts'
import { drugsGiven } from './given-drug.ts'
import type { DoseRequest, Given } from './request.ts'
import type { Interaction } from './rules.ts'

/** A planned line and the drug it names. */
export type Planned = { readonly line: string; readonly drug: Drug; readonly intoEar?: boolean }

/**
 * What a planned drug meets: other planned lines, and what was given and has not washed out. The days that
 * are still to wait are named; without a time the whole washout counts.
 *
 * @example judgeInteractions({ line: 'l2', drug: meloxicam }, planned, request, drugs, interactions)
 */
export function judgeInteractions(
  mine: Planned,
  planned: readonly Planned[],
  request: DoseRequest,
  drugs: readonly Drug[],
  interactions: readonly Interaction[],
): DoseFinding[] {
  return interactions.flatMap((interaction) => [
    ...planned
      .filter((other) => other.line !== mine.line && meet(interaction, mine.drug, other.drug))
      .filter((other) => !(mine.intoEar || other.intoEar) || reachesFromSurface(interaction))
      .map((other) =>
        finding(interaction, mine, `planned ${other.drug.name} (line ${other.line})`, 'Both stand in this plan'),
      ),
    ...request.given.flatMap((given) =>
      drugsGiven(drugs, given.drug).flatMap((other) => met(interaction, mine, given, other, request)),
    ),
  ])
}

function finding(interaction: Interaction, mine: Planned, other: string, left: string): DoseFinding {
  const about = { drug: mine.drug.name, other, left, because: interaction.because }
  return found(interaction.level, interaction.code, about, [interaction])
}

function meet(interaction: Interaction, a: Drug, b: Drug): boolean {
  if (a.id === b.id) return false
  const [first, second] = interaction.between
  return (
    (a.groups.includes(first) && b.groups.includes(second)) || (a.groups.includes(second) && b.groups.includes(first))
  )
}

/** Drops for the ear reach stomach and gut as a steroid does, not the kidney as an aminoglycoside does. */
function reachesFromSurface({ code }: Interaction): boolean {
  return code === 'nsaid-with-steroid'
}

function met(interaction: Interaction, mine: Planned, given: Given, other: Drug, request: DoseRequest): DoseFinding[] {
  if (!meet(interaction, mine.drug, other)) return []
  if (given.onSurface && !reachesFromSurface(interaction)) return []
  const washout =
    interaction.washouts.find((entry) => entry.drug === other.id) ??
    interaction.washouts.find((entry) => entry.group !== undefined && other.groups.includes(entry.group))
  if (!washout) return [finding(interaction, mine, saidOf(given), 'How long to wait is not known')]
  if (!stillCounts(given.at, request.at, washout.value)) return []
  const about = {
    drug: mine.drug.name,
    other: saidOf(given),
    left: waitLeft(given, request, washout.value),
    because: interaction.because,
  }
  return [found(interaction.level, interaction.code, about, [interaction, washout])]
}

/** How long is left of a washout, in words. */
export function waitLeft(given: Given, request: DoseRequest, washout: Quantity<'h'>): string {
  const gone = given.at && request.at ? hoursBetween(given.at, request.at).value : new Decimal(0)
  const rest = new Quantity(washout.value.minus(gone), 'h')
  const unknown = given.at && request.at ? '' : ' (its time is not known)'
  if (washout.value.lt(24)) return `${plain(rest.value.toDecimalPlaces(1))} h to wait${unknown}`
  return `${plain(rest.value.div(24).ceil())} days to wait${unknown}`
}
