import type { Side, Species } from '../animal/species.ts'
import type { Path, Point } from './geometry.ts'
import type { Layer, PlateParameters, View } from './parameters.ts'

/** Everything that can be pinned, named or touched. */
export const structures = [
  'flap',
  'tragus',
  'antitragus',
  'anthelix',
  'opening',
  'vertical-canal',
  'horizontal-canal',
  'cartilage',
  'annular-cartilage',
  'bony-meatus',
  'drum',
  'ossicles',
  'bulla',
  'septum',
  'promontory',
  'inner-ear',
  'auditory-tube',
  'brain',
  'facial-nerve',
  'nerve-foramen',
  'nerve-to-lids',
  'retroglenoid-vein',
  'external-carotid',
  'temple-artery',
  'flap-artery',
  'parotid',
  'jaw-joint',
  'temporal-muscle',
  'digastric',
  'hypoglossal-nerve',
  'atlas',
  'mass',
  'incision',
  'cut-at-meatus',
  'bulla-opening',
  'leave-alone',
  'scar',
] as const
export type StructureId = (typeof structures)[number]

/** What a line means; the theme decides how it looks. Every meaning differs in weight or dash, never only in colour. */
export type StrokeRole =
  | 'outline'
  | 'bone'
  | 'fine'
  | 'faint'
  | 'texture'
  | 'context'
  | 'midline'
  | 'drum'
  | 'ossicle'
  | 'nerve'
  | 'nerve-behind'
  | 'vein'
  | 'artery'
  | 'artery-behind'
  | 'unknown'
  | 'question'
  | 'finding'
  | 'cut'
  | 'removed'
  | 'planned'
  | 'scar'

export type FillRole =
  | 'paper'
  | 'tissue'
  | 'muscle'
  | 'gland'
  | 'cartilage'
  | 'bone'
  | 'brain'
  | 'lining'
  | 'air'
  | 'filled'
  | 'mineral'
  | 'mass'
  | 'opened'
  | 'leave-alone'
  | 'unknown'

export type Shape = {
  readonly structure: StructureId | 'body'
  readonly layer: Layer
  readonly path: Path
  readonly stroke: StrokeRole | null
  readonly fill: FillRole | null
  /** The middle of a sign that is never mirrored, like a question mark. */
  readonly upright?: Point
}

/** A word that belongs to a point of the drawing; where it stands on the sheet is decided by the layout. */
export type SceneLabel = {
  readonly structure: StructureId
  readonly text: string
  /** What is known of it here, `severely narrowed`; null when there is nothing to say. */
  readonly state: string | null
  readonly at: Point
  /** Findings and surgery come before anatomy when the sheet is small. */
  readonly weight: 'finding' | 'surgery' | 'anatomy'
}

export type HitArea = { readonly structure: StructureId; readonly path: Path }

export type Box = { readonly x: number; readonly y: number; readonly width: number; readonly height: number }

/** A drawing without a sheet: exact lines, words at points, areas to touch. No colours, no fonts, no pixels. */
export type Scene = {
  readonly plate: number
  readonly species: Species
  readonly side: Side
  readonly view: View
  readonly parameters: PlateParameters
  readonly frame: Box
  readonly shapes: readonly Shape[]
  readonly labels: readonly SceneLabel[]
  readonly hits: readonly HitArea[]
  readonly title: string
  readonly subtitle: string
  /** Words at the left and right foot of the drawing: which way is the nose, the midline. */
  readonly leftward: string
  readonly rightward: string
  readonly key: readonly { readonly sample: StrokeRole | FillRole; readonly text: string }[]
  readonly notes: readonly string[]
  /** Length of the scale bar in canvas units, and its words; null where nothing is to scale. */
  readonly scale: { readonly length: number; readonly text: string } | null
}
