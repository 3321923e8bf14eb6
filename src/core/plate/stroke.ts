import { type Path, type Point, round, smooth } from './geometry.ts'
import { type DrawnTool, mostPoints, type Stroke, toolWidths } from './hand.ts'

/** In units of the plate: a fifth of a millimetre of the printed page. */
const tolerance = 0.35

/**
 * A stroke from the points a hand gave, in units of the plate: tremor is evened out, points that change nothing are
 * left out, and what is kept are whole tenths. Both ends stay where the hand put them.
 *
 * @example strokeFrom([[100, 100], [101, 100], [140, 120]], 'pen')
 * Reference: Douglas and Peucker, Cartographica 10 (2), 1973, for the points that may be left out.
 */
export function strokeFrom(given: readonly Point[], tool: DrawnTool): Stroke {
  let kept = simplified(evened(given), tolerance)
  for (let wider = tolerance * 2; kept.length > mostPoints; wider *= 2) kept = simplified(kept, wider)
  return { tool, width: toolWidths[tool], points: kept.flatMap(([x, y]) => [tenths(x), tenths(y)]) }
}

function tenths(value: number): number {
  return Math.min(Math.max(Math.round(value * 10), -20_000), 30_000) + 0
}

/** Each inner point moves to the weighted mean of itself and its neighbours. */
function evened(points: readonly Point[]): Point[] {
  return points.map((point, index) => {
    const [before, after] = [points[index - 1], points[index + 1]]
    if (!before || !after) return point
    return [(before[0] + 2 * point[0] + after[0]) / 4, (before[1] + 2 * point[1] + after[1]) / 4]
  })
}

/** The fewest of the points from which no given one lies further than the tolerance. */
export function simplified(points: readonly Point[], within: number): Point[] {
  const last = points.length - 1
  if (last < 2) return [...points]
  const keep = new Set([0, last])
  const open: [number, number][] = [[0, last]]
  for (let span = open.pop(); span; span = open.pop()) {
    const [from, to] = span
    const far = farthest(points, from, to)
    if (far.distance <= within) continue
    keep.add(far.index)
    open.push([from, far.index], [far.index, to])
  }
  return points.filter((_, index) => keep.has(index))
}

function farthest(points: readonly Point[], from: number, to: number): { index: number; distance: number } {
  const a = points[from] ?? ([0, 0] as const)
  const b = points[to] ?? a
  let best = { index: from, distance: -1 }
  for (let index = from + 1; index < to; index += 1) {
    const distance = distanceToSpan(points[index] ?? a, a, b)
    if (distance > best.distance) best = { index, distance }
  }
  return best
}

/** From a point to the straight piece between two others, its ends included: a loop that comes back is kept. */
function distanceToSpan([x, y]: Point, a: Point, b: Point): number {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]]
  const long = dx * dx + dy * dy
  const share = long === 0 ? 0 : Math.min(Math.max(((x - a[0]) * dx + (y - a[1]) * dy) / long, 0), 1)
  return Math.sqrt((x - a[0] - share * dx) ** 2 + (y - a[1] - share * dy) ** 2)
}

/** The line of a stroke on the plate, through every point that was kept; a single touch is a dot. */
export function strokePath({ points }: Stroke): Path {
  const corners: Point[] = []
  for (let index = 0; index + 1 < points.length; index += 2) {
    corners.push([round((points[index] ?? 0) / 10), round((points[index + 1] ?? 0) / 10)])
  }
  const [first] = corners
  const moves = corners.some((corner) => corner[0] !== first?.[0] || corner[1] !== first?.[1])
  if (first && !moves) {
    return [
      ['M', first[0], first[1]],
      ['L', round(first[0] + 0.1), first[1]],
    ]
  }
  return smooth(corners)
}
