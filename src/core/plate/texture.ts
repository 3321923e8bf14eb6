import { between, type Command, distance, moved, type Path, type Point, round, sampled, smooth } from './geometry.ts'

/** Unequal on purpose and the same on every run: nothing that lived is drawn with a ruler. */
const unequal = [0.2, 0.9, 0.45, 0.7, 0.1, 0.6, 0.35, 1, 0.5, 0.8]

function uneven(index: number): number {
  return unequal[index % unequal.length] ?? 0.5
}

/**
 * Fibres of a muscle: fine lines along a direction, of unequal length, that stay clear of the outline.
 *
 * @example fibres(points, [0, 1], 14)
 */
export function fibres(outline: readonly Point[], [dx, dy]: Point, spacing: number): Path {
  const edge = sampled(outline, 4, true)
  const long = Math.sqrt(dx * dx + dy * dy)
  const [ux, uy] = [dx / long, dy / long]
  const turned = edge.map(([x, y]): Point => [x * ux + y * uy, y * ux - x * uy])
  const across = turned.map(([, v]) => v)
  const back = (u: number, v: number): readonly [number, number] => [round(u * ux - v * uy), round(u * uy + v * ux)]
  const path: Command[] = []
  const first = Math.min(...across)
  for (let row = 1; first + row * spacing < Math.max(...across); row += 1) {
    const v = first + row * spacing + (uneven(row) - 0.5) * spacing * 0.4
    const crossings = crossingsAt(turned, v)
    for (let pair = 0; pair + 1 < crossings.length; pair += 2) {
      const [from, to] = [
        (crossings[pair] ?? 0) + 9 + 22 * uneven(row + pair),
        (crossings[pair + 1] ?? 0) - 9 - 22 * uneven(row * 3 + pair),
      ]
      if (to - from < 18) continue
      const bow = (uneven(row + 4) - 0.5) * 0.07 * (to - from)
      const third = (to - from) / 3
      path.push(['M', ...back(from, v)])
      path.push(['C', ...back(from + third, v + bow), ...back(to - third, v + bow), ...back(to, v)])
    }
  }
  return path
}

function crossingsAt(polygon: readonly Point[], v: number): number[] {
  return polygon
    .flatMap(([u, w], index) => {
      const [next, then] = polygon[(index + 1) % polygon.length] ?? [u, w]
      return w > v === then > v ? [] : [u + ((v - w) / (then - w)) * (next - u)]
    })
    .sort((a, b) => a - b)
}

/**
 * Lobules of a gland: small bows in rows, each row shifted by half a bow.
 *
 * @example lobules(points, 26)
 */
export function lobules(outline: readonly Point[], size: number): Path {
  const edge = sampled(outline, 4, true)
  const [xs, ys] = [edge.map(([x]) => x), edge.map(([, y]) => y)]
  const path: Command[] = []
  let row = 0
  for (let y = Math.min(...ys) + size * 0.7; y < Math.max(...ys); y += size * 0.72) {
    const inside = crossingsAt(edge, y)
    for (let x = Math.min(...xs) + (row % 2) * size * 0.5; x < Math.max(...xs); x += size) {
      const turn = uneven(row * 3 + Math.round(x))
      const clear = [x - size * 0.62, x + size * 0.62].every((edgeOf) => isBetween(inside, edgeOf, 3))
      if (!clear || turn < 0.25) continue
      const half = size * (0.26 + 0.14 * turn)
      const deep = size * (turn > 0.65 ? -0.2 : 0.26)
      const low = y + (turn - 0.5) * size * 0.3
      const ends = [round(low), round(low + deep)] as const
      path.push(['M', round(x - half), ends[0]])
      path.push(['C', round(x - half * 0.7), ends[1], round(x + half * 0.7), ends[1], round(x + half), ends[0]])
    }
    row += 1
  }
  return path
}

function isBetween(crossings: readonly number[], x: number, margin: number): boolean {
  for (let pair = 0; pair + 1 < crossings.length; pair += 2) {
    if (x > (crossings[pair] ?? 0) + margin && x < (crossings[pair + 1] ?? 0) - margin) return true
  }
  return false
}

/**
 * The folds of the brain under its outline: one winding line that follows it inside, in bows of about one length.
 *
 * @example windings(points, 1)
 */
export function windings(outline: readonly Point[], towards: 1 | -1): Path {
  const even = evenly(sampled(outline, 8), 17)
  const wave = moved(even, (share) => {
    const index = Math.round(share * (even.length - 1))
    const depth = [10, 17, 31, 38, 33, 18][index % 6] ?? 10
    return towards * (depth + 8 * uneven(Math.floor(index / 6)))
  })
  return smooth(wave.slice(2, -2))
}

/** Points of a line at equal distances along it. */
function evenly(line: readonly Point[], step: number): Point[] {
  const points: Point[] = []
  let owed = 0
  for (let index = 1; index < line.length; index += 1) {
    const [a, b] = [line[index - 1] ?? ([0, 0] as const), line[index] ?? ([0, 0] as const)]
    const long = distance(a, b)
    for (; owed <= long; owed += step) points.push(between(a, b, long === 0 ? 0 : owed / long))
    owed -= long
  }
  return points
}
