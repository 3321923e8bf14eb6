import type { AnimalWord } from '#core/animal/conditions.ts'
import type { ProcedureId } from '#core/animal/procedure.ts'
import type { Species } from '#core/animal/species.ts'
import type { Provenance, Sourced } from '#core/evidence/sourced.ts'
import type { Divides, Dose } from '#core/formulary/drug.ts'
import type { Group, Use } from '#core/formulary/words.ts'
import type { Level } from '#core/outcome/finding.ts'
import type { BloodMark, BloodMarkCode } from '#core/theatre/blood-marks.ts'
import type { SwabFacts } from '#core/theatre/blood-swabs.ts'
import type { BloodPerKg } from '#core/theatre/blood-volume.ts'
import { Decimal, type Quantity, quantity } from '#core/units/quantity.ts'
import type { PatchBand, TabletBand } from './calc/operation.ts'
import type { DoseCode } from './findings.ts'
import type { MixingRules } from './mixing.ts'
import type { Syringe } from './syringe.ts'

/** From `low` to `high`, both included; a bare ratio. */
export type Band = { readonly low: Decimal; readonly high: Decimal }

/** The numbers of the weight checks. */
export type WeightRules = {
  readonly plausible: Readonly<Record<Species, Sourced<{ readonly usual: KgBand; readonly possible: KgBand }>>>
  readonly olderThan: Sourced<Quantity<'h'>>
  readonly pounds: Sourced<readonly [Band, Band]>
  readonly decimalSlip: Sourced<readonly [Band, Band]>
  readonly changed: Sourced<{ readonly note: Decimal; readonly confirm: Decimal }>
  /** From this point of the nine-point scale on, lean weight counts; each point above five is this share. */
  readonly lean: Sourced<{ readonly from: number; readonly sharePerPoint: Decimal }>
}
export type KgBand = { readonly low: Quantity<'kg'>; readonly high: Quantity<'kg'> }

/** Example: `band('2.0', '2.4')`. */
export function band(low: string, high: string): Band {
  return { low: new Decimal(low), high: new Decimal(high) }
}

/** Example: `kgBand('1.5', '80')`. */
export function kgBand(low: string, high: string): KgBand {
  return { low: quantity(low, 'kg'), high: quantity(high, 'kg') }
}

/** Two groups that must not meet, or must be thought about. */
export type Interaction = Provenance & {
  readonly code: 'nsaid-with-steroid' | 'two-nsaids' | 'pair-forbidden' | 'pair-to-think-about'
  readonly level: Level
  readonly between: readonly [Group, Group]
  readonly because: string
  /** How long a given drug of the first or second group still counts; the most specific entry wins. */
  readonly washouts: readonly (Sourced<Quantity<'h'>> & { readonly drug?: string; readonly group?: Group })[]
}

/** Why red cells are held back; the facts themselves are in the code's own words. */
export type TransfusionRules = {
  readonly catsTyped: Provenance
  readonly groups: Provenance
  readonly dogs: Provenance
  readonly crossMatch: Provenance
  /** The product that is worked out from a goal of PCV: blood volume × (goal − now) ÷ PCV of the donor. */
  readonly byGoal: Provenance & { readonly drug: string }
  readonly bloodPerKg: Readonly<Record<Species, Sourced<BloodPerKg>>>
}

/** The numbers of bags, syringes on a pump, and loading doses. */
export type InfusionRules = {
  /** The smallest step a pump is set in. */
  readonly pumpStep: Sourced<Quantity<'mL/h'>>
  /** From this share of a bag on, the drug's own volume of fluid is taken out first. */
  readonly ownShare: Sourced<Decimal>
  /** How far the dose worked back from the label may lie from the one prescribed. */
  readonly within: Sourced<Decimal>
  /** So many half-lives pass before a steady infusion is at its plateau, but for this share. */
  readonly plateau: Sourced<{ readonly halfLives: number; readonly reached: Decimal }>
}

/** Gravity sets. */
export type DripRules = {
  readonly formula: Provenance
  /** Drops per mL that sets are sold with. */
  readonly sets: Sourced<readonly string[]>
  /** What may run by gravity; a drug asks for a pump. */
  readonly uses: Sourced<readonly Use[]>
}

/** Fluid by species: where anaesthesia starts, how each hour is cut, and what an animal at rest needs. */
export type FluidRules = {
  readonly start: Readonly<Record<Species, Sourced<Quantity<'mL/kg/h'>>>>
  readonly cut: Sourced<Decimal>
  readonly most: Sourced<Quantity<'mL/kg/h'>>
  /** mL in 24 h = factor × kg^power. */
  readonly maintenance: Readonly<Record<Species, Sourced<{ readonly factor: Decimal; readonly power: Decimal }>>>
  /** mL of deficit for one kilogram and one per cent. */
  readonly deficit: Sourced<Quantity<'mL/kg'>>
}

/**
 * A label that prints tablets by weight instead of a rule for rounding. It speaks of this species, use, product, dose
 * and gap only: whatever differs is rounded as usual, and held to the maximum of the row.
 */
export type LabelTable = Provenance & {
  readonly drug: string
  readonly species: Species
  readonly use: Use
  readonly qualifier: string
  readonly size: Quantity<'mg'>
  readonly divides: Divides
  readonly dose: Dose
  readonly every: Quantity<'h'>
  /** The most that this label's own bands give: a limit belongs to the label it comes from. */
  readonly most: Dose
  readonly bands: readonly Sourced<TabletBand>[]
}

/** What an animal is or has that bars whole groups of drugs, or asks for a person, whatever the row says. */
export type AnimalRule = Provenance & {
  readonly code: Extract<
    DoseCode,
    | 'kidney-drug-with-raised-creatinine'
    | 'nsaid-after-blood-loss'
    | 'unsafe-in-pregnancy'
    | 'ototoxic-with-open-ear'
    | 'drying-drug-with-dry-eye'
    | 'sedation-with-flat-face'
    | 'local-anaesthetic-toxicity-suspected'
  >
  readonly groups: readonly Group[]
  /** Drugs that are named one by one, because no group says it. */
  readonly drugs?: readonly string[]
  readonly words: readonly AnimalWord[]
  /** Only where it is put into the ear. */
  readonly onlyInEar?: true
  /** Only from this strength on, or only below it; a strength that nobody stated counts as a strong one. */
  readonly fromStrength?: Quantity<'mg/mL'>
  readonly belowStrength?: Quantity<'mg/mL'>
  readonly level: Level
  /** The emergency sheet is never silenced: there a rule is a note, unless the drug is the harm itself. */
  readonly evenInEmergency?: true
  readonly because: string
  /** What would make it possible. */
  readonly possible: string
}

/** What holds for every ear that is open, and for one that nobody looked into. */
export type EarRules = {
  /** Only fluids of these groups go into an ear whose drum was not seen whole. */
  readonly harmless: Sourced<readonly Group[]>
  /** Drops stopped longer ago than this are in the ear no more. */
  readonly inEarFor: Sourced<Quantity<'h'>>
  /** Operations after which, and for which, the bulla lies open. */
  readonly opensBulla: Sourced<readonly ProcedureId[]>
}

/** Where an animal's upper end is lower than the row's: the share that is left of it. */
export type DoseReduction = Provenance & {
  readonly drugs: readonly string[]
  readonly species?: Species
  readonly word: AnimalWord
  readonly left: Decimal
}

/** Strengths of one drug, in mg/mL, that are taken for each other. */
export type ConfusedStrengths = Provenance & {
  readonly drug: string
  readonly strengths: readonly string[]
  /** What stands beside it, when that is another drug. */
  readonly beside?: string
}

/** What a breed says about the weight of a grown animal, and whether changed copies of ABCB1 are common in it. */
export type BreedRule = {
  /** In small letters, as it stands in what people write. */
  readonly name: string
  readonly species: Species
  readonly kg: Sourced<KgBand>
  readonly abcb1?: Provenance
}

/** What is needed to read the loss of blood from a case. */
export type LossRules = {
  readonly swabs: SwabFacts
  readonly perKg: Readonly<Record<Species, Sourced<BloodPerKg>>>
  readonly marks: readonly Sourced<BloodMark>[]
  /** From this mark on the loss counts, for this long. */
  readonly from: Sourced<{ readonly mark: BloodMarkCode; readonly within: Quantity<'h'> }>
}

/** All numbers of the dosing checks that belong to no single drug. */
export type DosingRules = {
  readonly weight: WeightRules
  /** k of Meeh's form; a decimal, or its text. */
  readonly bodySurface: Readonly<Record<Species, Sourced<Decimal | string>>>
  /** Between these a clinic may set a factor of its own; anything else is another unit or a slip. */
  readonly ownSurfaceFactor: Sourced<Band>
  readonly overRange: Sourced<{ readonly confirm: Decimal; readonly block: Decimal; readonly unitSlip: Decimal }>
  readonly largeBolus: Sourced<Quantity<'mL/kg'>>
  /** A pump slower than this is not exact. */
  readonly slowestRate: Sourced<Quantity<'mL/h'>>
  readonly dilutions: Sourced<readonly number[]>
  /** How many times a strength may lie from every listed one before a person confirms, and before it is refused. */
  readonly strengthOff: Sourced<{ readonly confirm: Decimal; readonly block: Decimal }>
  /** Usual syringes and their marks; a clinic may set its own. */
  readonly syringes: Sourced<readonly Syringe[]>
  /** Usual patch by weight. */
  readonly patches: readonly Sourced<PatchBand>[]
  /** At this point of the nine-point scale and below an animal is thin: it starts low. */
  readonly thinUpTo: Sourced<number>
  /** Weeks and years between which an age is ordinary; outside it is pointed out. */
  readonly ordinaryAge: Sourced<{ readonly fromMonths: number; readonly toYears: number }>
  /** How far rounding may move a dose in silence; some classes are held closer, and refused beyond their own limit. */
  readonly rounding: Sourced<{
    readonly confirm: Decimal
    readonly classes: readonly { readonly groups: readonly Group[]; readonly note: Decimal; readonly block?: Decimal }[]
  }>
  /** A repeat before this share of the row's shortest gap is too soon; before half of it a person confirms. */
  readonly repeat: Sourced<{
    readonly early: Decimal
    readonly confirm: Decimal
    /** How long a drug that is meant once, without a gap of hours, is still remembered beside a second dose. */
    readonly onceWithin: Quantity<'h'>
  }>
  /** Under these the pressure is low; a reading older than `within` says nothing of now. Systolic does not count in cats. */
  readonly lowPressure: Sourced<{
    readonly mean: Quantity<'mm[Hg]'>
    readonly systolic: Quantity<'mm[Hg]'>
    readonly within: Quantity<'h'>
  }>
  readonly leanWeightGroups: Sourced<readonly Group[]>
  /** Groups that are counted on lean weight when they run in by infusion, and only then. */
  readonly leanWeightInfusions: Sourced<readonly Group[]>
  readonly secondPersonGroups: Sourced<readonly Group[]>
  readonly localAnaestheticInfusion: Sourced<string>
  readonly interactions: readonly Interaction[]
  readonly animal: readonly AnimalRule[]
  readonly ear: EarRules
  readonly reductions: readonly DoseReduction[]
  readonly confusedStrengths: readonly ConfusedStrengths[]
  readonly breeds: readonly BreedRule[]
  readonly loss: LossRules
  /** Under this a tear test says that the eye is dry. */
  readonly lowTears: Sourced<Quantity<'mm/min'>>
  /** Drugs whose liquids may hold xylitol, which harms dogs. */
  readonly xylitol: Sourced<readonly string[]>
  /** Groups that are dosed on a weight between the lean and the measured one in a fat animal: nobody says where. */
  readonly betweenWeights: Sourced<readonly Group[]>
  /** How long a declared emergency lifts blocks before it has to be declared again. */
  readonly emergencyCounts: Sourced<Quantity<'h'>>
  /** Within this time a second person signs for what an emergency lifted. */
  readonly secondNameWithin: Sourced<Quantity<'h'>>
  /** Who says so, when a check rests on no number at all: that a drug must be named, a weight known, a dose chosen. */
  readonly withoutNumber: Provenance
  readonly transfusion: TransfusionRules
  readonly infusions: InfusionRules
  readonly mixing: MixingRules
  readonly fluids: FluidRules
  readonly drip: DripRules
  readonly labelTables: readonly LabelTable[]
  readonly home: HomeRules
}

/** What is asked about where an animal goes home. */
export type HomeRules = {
  /** A first dose more than this many days after the entry that sends it home is asked about. */
  readonly firstDoseWithin: Sourced<{ readonly days: number }>
  /** A day further off than this after going home is taken for a slip of the year. */
  readonly farthest: Sourced<{ readonly months: number }>
  /** How far apart an eye that does not blink is kept wet while awake, by what is used; for the night it gets ointment. */
  readonly eyeWithoutBlink: Readonly<
    Record<'eye-gel' | 'eye-ointment', Sourced<readonly [from: number, until: number]>>
  >
}
