import type { Sourced } from '../evidence/sourced.ts'
import type { Narrowing } from './parameters.ts'

/** Lines of the transverse plate; every species has all of them. Points as `x,y x,y` on the canvas of 1000. */
export const transverseLines = [
  'skin',
  'headSkin',
  'flapErectOuter',
  'flapErectInner',
  'flapDropOuter',
  'flapDropInner',
  'flapStumpOuter',
  'flapStumpInner',
  'tragus',
  'meatusRoof',
  'meatusFloor',
  'drumUpper',
  'drumLower',
  'malleus',
  'incus',
  'stapes',
  'cavityRoof',
  'promontory',
  'roundWindow',
  'ovalWindow',
  'shell',
  'petrous',
  'skull',
  'brain',
  'auditoryTube',
  'temporalMuscle',
  'parotid',
  'digastric',
  'nerve',
  'nerveBuccal',
  'nerveToLids',
  'vein',
  'carotid',
  'maxillaryArtery',
  'templeArtery',
  'flapArtery',
  'hypoglossal',
  'stemCut',
  'scar',
  'meatusCut',
  'bullaCut',
  'leaveAlone',
] as const
export type TransverseLine = (typeof transverseLines)[number]

/** Lines of the lateral surgical plate. */
export const lateralLines = [
  'flapErect',
  'flapDrop',
  'flapStump',
  'opening',
  'tragus',
  'antitragus',
  'verticalLeft',
  'verticalRight',
  'meatus',
  'foramen',
  'ridge',
  'nerve',
  'nerveToLids',
  'nerveBuccalUpper',
  'nerveBuccalLower',
  'nerveCaudal',
  'veinForamen',
  'vein',
  'jawJoint',
  'jaw',
  'bulla',
  'bullaCut',
  'leaveAlone',
  'parotid',
  'carotid',
  'maxillaryArtery',
  'templeArtery',
  'flapArtery',
  'digastric',
  'hypoglossal',
  'jugular',
  'atlas',
  'cutBar',
  'cutStem',
  'cutCircle',
  'scarCircle',
] as const
export type LateralLine = (typeof lateralLines)[number]

export type TransverseFacts = {
  /** The two walls of the lumen as matched pairs, from the mouth to the drum: lateral/ventral first. */
  readonly canal: Sourced<string>
  /** Shares of the canal from the mouth: where the horizontal part begins, and where the two cartilages begin and end. */
  readonly parts: Sourced<{
    readonly bend: number
    readonly auricularEnd: number
    readonly annularStart: number
    readonly annularEnd: number
  }>
  readonly lines: Readonly<Record<TransverseLine, Sourced<string>>>
  /** The dog's bulla is one room with a low ridge; the cat's is two rooms parted by a septum with two gaps. */
  readonly rooms:
    | { readonly kind: 'one'; readonly ridge: Sourced<string> }
    | {
        readonly kind: 'two'
        readonly upper: Sourced<string>
        readonly lower: Sourced<string>
        readonly gap: Sourced<string>
      }
  readonly wall: Sourced<number>
  /** How many units of the canvas are one millimetre in the master drawing. */
  readonly unitsPerMillimetre: Sourced<number>
  readonly cochlea: Sourced<string>
}

export type LateralFacts = {
  readonly lines: Readonly<Record<LateralLine, Sourced<string>>>
  readonly wall: Sourced<number>
}

export type SpeciesPlate = { readonly transverse: TransverseFacts; readonly lateral: LateralFacts }

/** All the drawing takes from content. */
export type PlateFacts = {
  readonly dog: SpeciesPlate
  readonly cat: SpeciesPlate
  /** Share of the open area that a grade takes away; drawn by it, never printed. */
  readonly areaLost: Sourced<Readonly<Record<Exclude<Narrowing, 'could-not-see' | 'not-assessed'>, number>>>
  readonly thickWallTimes: Sourced<number>
}
