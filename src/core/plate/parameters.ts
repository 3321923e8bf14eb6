import type { Side, Species } from '#core/animal/species.ts'

/** The plate changes its number whenever the same parameters give another drawing: strokes drawn on it belong to one. */
export const plateVersion = 3

export const views = ['transverse', 'lateral'] as const
export type View = (typeof views)[number]

export const carriages = ['erect', 'drop', 'not-recorded'] as const
export type Carriage = (typeof carriages)[number]

/** `could-not-see` and `not-assessed` are answers of their own; neither is ever drawn as an open canal. */
export const narrowings = ['none', 'mild', 'moderate', 'severe', 'closed', 'could-not-see', 'not-assessed'] as const
export type Narrowing = (typeof narrowings)[number]

export const yesNoUnknown = ['yes', 'no', 'not-assessed'] as const
export type YesNoUnknown = (typeof yesNoUnknown)[number]

export const drumStates = ['intact', 'ruptured', 'could-not-see', 'not-assessed'] as const
export type DrumState = (typeof drumStates)[number]

export const bullaContents = ['air', 'filled', 'not-assessed'] as const
export type BullaContent = (typeof bullaContents)[number]

export const bullaWalls = ['normal', 'thick', 'eaten-away', 'not-assessed'] as const
export type BullaWall = (typeof bullaWalls)[number]

export const massPlaces = ['opening', 'vertical', 'bend', 'horizontal', 'bulla'] as const
export type MassPlace = (typeof massPlaces)[number]
export const massSizes = ['small', 'medium', 'large', 'not-recorded'] as const
export type MassSize = (typeof massSizes)[number]
export type Mass =
  | { readonly kind: 'none' | 'not-assessed' | 'place-not-recorded' }
  | { readonly kind: 'placed'; readonly place: MassPlace; readonly size: MassSize }

export const incisions = ['T-shaped', 'circular', 'not-recorded'] as const
export type Incision = (typeof incisions)[number]

/** What of the operation is drawn. `planned` shows the lines of the plan, `done` the ear as it was left. */
export type Surgery =
  /** `not-drawn`: an operation the plate has no drawing for; it says so in words. */
  | { readonly kind: 'none' | 'not-drawn' }
  | { readonly kind: 'planned' | 'done'; readonly incision: Incision; readonly canal: Removal; readonly bulla: Opening }
export const removals = ['taken-away', 'stays', 'not-recorded'] as const
export type Removal = (typeof removals)[number]
export const openings = ['opened', 'not-opened', 'not-recorded'] as const
export type Opening = (typeof openings)[number]

export const layers = [
  'surroundings',
  'flap',
  'vertical-canal',
  'horizontal-canal',
  'drum',
  'bulla',
  'facial-nerve',
  'retroglenoid-vein',
  'carotid-branch',
  'parotid',
  'incision',
  'taken-away',
  'opened-bulla',
] as const
export type Layer = (typeof layers)[number]

/** Everything the drawing depends on. Two plates with equal parameters are equal to the byte. */
export type PlateParameters = {
  readonly species: Species
  readonly side: Side
  readonly view: View
  readonly carriage: Carriage
  /** `whole`: one grade was recorded for the whole canal and is drawn in both parts. */
  readonly narrowing: {
    readonly vertical: Narrowing
    readonly horizontal: Narrowing
    readonly recorded: 'whole' | 'by-part'
  }
  readonly mineral: YesNoUnknown
  readonly drum: DrumState
  readonly bullaContent: BullaContent
  readonly bullaWall: BullaWall
  readonly mass: Mass
  readonly surgery: Surgery
  /** The layers that are on. */
  readonly layers: readonly Layer[]
}

export function isUnknown(state: string): boolean {
  return state === 'not-assessed' || state === 'could-not-see' || state === 'not-recorded'
}

/** The surgery of the plate when there are lines of it to draw. */
export function operated(surgery: Surgery): Extract<Surgery, { kind: 'planned' | 'done' }> | null {
  return surgery.kind === 'planned' || surgery.kind === 'done' ? surgery : null
}

/** After the ablation there is no canal, no drum and no opening. */
export function canalIsGone({ surgery }: Pick<PlateParameters, 'surgery'>): boolean {
  return surgery.kind === 'done' && surgery.canal === 'taken-away'
}
