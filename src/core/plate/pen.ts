import type { Canal } from './canal.ts'
import type { Drawing } from './drawing.ts'
import type { PlateFacts, TransverseFacts, TransverseLine } from './facts.ts'
import { between, joined, moved, type Point, sampled, straight } from './geometry.ts'
import type { PlateParameters } from './parameters.ts'
import type { StructureId } from './scene.ts'
import type { PlateWords } from './words.ts'

export type Pen = {
  readonly drawing: Drawing
  readonly parameters: PlateParameters
  readonly facts: TransverseFacts
  readonly all: PlateFacts
  readonly words: PlateWords
  readonly line: (name: TransverseLine) => Point[]
  readonly canal: Canal
  /** After the operation: the canal is gone, its place is soft tissue. */
  readonly gone: boolean
}

export function label(pen: Pen, structure: StructureId, state: string | null = null) {
  return { text: pen.words.structures[structure], state, weight: 'anatomy' as const }
}

/** The mean of the points of an outline. */
export function middle(points: readonly Point[]): Point {
  const sum = points.reduce<Point>((total, [x, y]) => [total[0] + x, total[1] + y], [0, 0])
  return [sum[0] / points.length, sum[1] / points.length]
}

/** A point of an outline at a share of its points, moved towards its middle. */
export function at(points: readonly Point[], share: number, inwards: number): Point {
  const point = points[Math.floor(share * points.length)] ?? [0, 0]
  const centre = middle(points)
  const far = Math.sqrt((centre[0] - point[0]) ** 2 + (centre[1] - point[1]) ** 2) || 1
  return between(point, centre, inwards / far)
}

/** The area of a line that a finger can hit. */
export function band(points: readonly Point[], half = 14) {
  const dense = sampled(points, 4)
  return joined(moved(dense, half), moved(dense, -half).reverse())
}

/** Short strokes across a closed cut. */
export function stitches(line: readonly Point[], half = 8) {
  const dense = sampled(line, 3)
  const left = moved(dense, half)
  const right = moved(dense, -half)
  return dense.flatMap((_, index) => {
    const [a, b] = [left[index], right[index]]
    return index % 2 === 1 && a && b ? straight([a, b]) : []
  })
}
