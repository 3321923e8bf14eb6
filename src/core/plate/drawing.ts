import { type Path, type Point, round } from './geometry.ts'
import type { Layer } from './parameters.ts'
import type { FillRole, HitArea, SceneLabel, Shape, StrokeRole, StructureId } from './scene.ts'

type Look = { readonly stroke?: StrokeRole; readonly fill?: FillRole }

/** Collects shapes, words and touch areas in painting order, and leaves out the layers that are off. */
export class Drawing {
  readonly shapes: Shape[] = []
  readonly labels: SceneLabel[] = []
  readonly hits: HitArea[] = []
  readonly #on: ReadonlySet<Layer>

  constructor(layers: readonly Layer[]) {
    this.#on = new Set(layers)
  }

  has(layer: Layer): boolean {
    return this.#on.has(layer)
  }

  add(layer: Layer, structure: Shape['structure'], path: Path, { stroke, fill }: Look): void {
    if (!this.has(layer) || path.length === 0) return
    this.shapes.push({ structure, layer, path, stroke: stroke ?? null, fill: fill ?? null })
  }

  /** A word at a point, and the area that stands for its structure under a finger. */
  name(
    layer: Layer,
    structure: StructureId,
    at: Point,
    label: Pick<SceneLabel, 'text' | 'state' | 'weight'>,
    hit: Path | null,
  ): void {
    if (!this.has(layer)) return
    this.labels.push({ structure, at: [round(at[0]), round(at[1])], ...label })
    if (hit) this.hits.push({ structure, path: hit })
  }

  /** A question mark, drawn as a line so that it needs no font: this was not assessed. */
  question(layer: Layer, structure: StructureId, at: Point, size = 17): void {
    const [x, y] = [round(at[0]), round(at[1])]
    const s = (dx: number, dy: number) => [round(x + dx * size), round(y + dy * size)] as const
    const hook: Path = [
      ['M', ...s(-0.45, -0.5)],
      ['C', ...s(-0.45, -1.15), ...s(0.5, -1.15), ...s(0.5, -0.5)],
      ['C', ...s(0.5, -0.05), ...s(0, -0.05), ...s(0, 0.42)],
    ]
    const dot: Path = [
      ['M', ...s(0, 0.82)],
      ['L', ...s(0, 0.9)],
    ]
    if (!this.has(layer)) return
    const path = [...hook, ...dot]
    this.shapes.push({ structure, layer, path, stroke: 'question', fill: null, upright: [x, y] })
  }
}
