import type { Species } from '#core/animal/species.ts'
import type { Provenance, Sourced } from '#core/evidence/sourced.ts'
import type { Finding } from '#core/outcome/finding.ts'
import { type BloodMark, lossAtMarks } from '#core/theatre/blood-marks.ts'
import { type BloodPerKg, type BloodVolume, bloodVolume } from '#core/theatre/blood-volume.ts'
import { type Quantity, times } from '#core/units/quantity.ts'
import { type EmergencyLine, emergencyLine } from './emergency-line.ts'
import type { EmergencyCall, EmergencyGroup, EmergencyStep, Suspicion } from './emergency-row.ts'
import type { OwnDefault } from './own-default.ts'
import { saySyringes } from './own-defaults.ts'
import type { KgBand, WeightRules } from './rules.ts'
import type { Syringe } from './syringe.ts'
import { leanWeight } from './weight.ts'

/** Joules per kilogram, lowest and highest. */
export type EnergyBand = { readonly low: Quantity<'J/kg'>; readonly high: Quantity<'J/kg'> }
export const placements = ['external', 'internal'] as const
export const waveforms = ['biphasic', 'monophasic'] as const
export type Placement = (typeof placements)[number]
export type Waveform = (typeof waveforms)[number]

/** Everything the sheet is made from; it comes from content. */
export type EmergencyFacts = {
  readonly groups: readonly EmergencyGroup[]
  readonly bloodPerKg: Readonly<Record<Species, Sourced<BloodPerKg>>>
  readonly marks: readonly Sourced<BloodMark>[]
  readonly energy: Readonly<Record<Placement, Readonly<Record<Waveform, Sourced<EnergyBand>>>>>
  readonly energyNotes: readonly Sourced<string>[]
  readonly plausible: Readonly<Record<Species, Sourced<{ readonly usual: KgBand; readonly possible: KgBand }>>>
  /** Fat holds little blood: the blood volume is counted on the lean weight, the doses on the whole. */
  readonly lean: WeightRules['lean']
  /** The syringes of the house, where it set its own. */
  readonly syringes?: OwnDefault<readonly Syringe[]>
}

export type EmergencyCode = 'weight-unusual' | 'weight-impossible' | 'blood-on-lean-weight' | 'house-syringes'
export type EmergencyFinding = Finding<EmergencyCode> & { readonly from: Provenance }

export type EmergencySheet = {
  readonly species: Species
  readonly weight: Quantity<'kg'>
  readonly groups: readonly {
    readonly call: EmergencyCall
    readonly steps: readonly EmergencyStep[]
    readonly lines: readonly EmergencyLine[]
  }[]
  readonly blood: BloodVolume
  readonly lossAt: ReturnType<typeof lossAtMarks>
  readonly energy: readonly {
    readonly placement: Placement
    readonly waveform: Waveform
    readonly perKg: Sourced<EnergyBand>
    readonly low: Quantity<'J'>
    readonly high: Quantity<'J'>
  }[]
  readonly findings: readonly EmergencyFinding[]
}

/**
 * The emergency sheet of one animal. It is never silenced: an odd weight is a note, a barred drug is printed as barred.
 *
 * @example emergencySheet({ species: 'cat', weight: quantity('4.1', 'kg') }, facts).blood.counted // 246 mL
 */
export function emergencySheet(
  animal: {
    readonly species: Species
    readonly weight: Quantity<'kg'>
    /** Body condition on the nine-point scale. */
    readonly bodyCondition?: number
    readonly suspected?: readonly Suspicion[]
  },
  facts: EmergencyFacts,
): EmergencySheet {
  const { species, weight, suspected = [] } = animal
  const lean = leanWeight(weight, animal.bodyCondition, facts)
  const blood = bloodVolume(lean, facts.bloodPerKg[species])
  return {
    species,
    weight,
    groups: facts.groups.map(({ call, steps, rows }) => ({
      call,
      steps: steps.filter((step) => step.species.includes(species)),
      lines: rows
        .filter((row) => row.species.includes(species))
        .map((row) => emergencyLine(row, weight, suspected, facts.syringes?.value)),
    })),
    blood,
    lossAt: lossAtMarks(blood.counted, facts.marks),
    energy: placements.flatMap((placement) =>
      waveforms.map((waveform) => {
        const perKg = facts.energy[placement][waveform]
        const { low, high } = perKg.value
        return { placement, waveform, perKg, low: times(low, weight, 'J'), high: times(high, weight, 'J') }
      }),
    ),
    findings: [...judgeWeight(species, weight, facts), ...onLean(weight, lean, facts), ...ofHouse(facts)],
  }
}

/** Whose syringes the volumes are drawn with, when they are not the usual ones. */
function ofHouse({ syringes: from }: EmergencyFacts): EmergencyFinding[] {
  if (!from) return []
  const about = { by: from.by, on: from.on, because: from.because, syringes: saySyringes(from.value) }
  return [{ code: 'house-syringes', level: 'note', about, sources: from.sources, from }]
}

function onLean(weight: Quantity<'kg'>, lean: Quantity<'kg'>, { lean: from }: EmergencyFacts): EmergencyFinding[] {
  if (lean.value.eq(weight.value)) return []
  const about = { weight: `${weight}`, lean: `${lean}` }
  return [{ code: 'blood-on-lean-weight', level: 'note', about, sources: from.sources, from }]
}

/** In an emergency a weight that would stop a plan only speaks. */
function judgeWeight(species: Species, weight: Quantity<'kg'>, facts: EmergencyFacts): EmergencyFinding[] {
  const from = facts.plausible[species]
  const { usual, possible } = from.value
  const outside = (band: KgBand) => weight.value.lt(band.low.value) || weight.value.gt(band.high.value)
  const say = (code: EmergencyCode, band: KgBand): EmergencyFinding[] => {
    const about = { weight: `${weight}`, species, low: `${band.low}`, high: `${band.high}` }
    return [{ code, level: 'note', about, sources: from.sources, from }]
  }
  if (outside(possible)) return say('weight-impossible', possible)
  return outside(usual) ? say('weight-unusual', usual) : []
}
