import type { Drawing } from './drawing.ts'
import type { LateralLine, PlateFacts } from './facts.ts'
import type { Path, Point } from './geometry.ts'
import type { Layer, PlateParameters } from './parameters.ts'
import type { SceneLabel, StructureId } from './scene.ts'
import type { PlateWords } from './words.ts'

export type LateralPen = {
  readonly drawing: Drawing
  readonly parameters: PlateParameters
  readonly wall: number
  readonly all: PlateFacts
  readonly words: PlateWords
  readonly line: (name: LateralLine) => Point[]
  readonly gone: boolean
}

export function name(
  pen: LateralPen,
  layer: Layer,
  structure: StructureId,
  at: Point | undefined,
  hit: Path | null,
  more: Partial<SceneLabel> = {},
): void {
  pen.drawing.name(
    layer,
    structure,
    at ?? [0, 0],
    { text: pen.words.structures[structure], state: null, weight: 'anatomy', ...more },
    hit,
  )
}

export function nibble([x, y]: Point): Point[] {
  return [
    [x - 15, y - 4],
    [x - 4, y - 13],
    [x + 11, y - 9],
    [x + 14, y + 6],
    [x + 2, y + 13],
    [x - 12, y + 9],
  ]
}
