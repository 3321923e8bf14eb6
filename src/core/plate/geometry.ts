/** A point of the canvas: x to the right, y downwards, both axes 0 to 1000. */
export type Point = readonly [x: number, y: number]

/** One step of a path, with exact numbers: move, line, curve, close. */
export type Command =
  | readonly ['M', number, number]
  | readonly ['L', number, number]
  | readonly ['C', number, number, number, number, number, number]
  | readonly ['Z']
export type Path = readonly Command[]

export const canvas = 1000

/** Two decimals are finer than any printer; equal inputs give equal bytes. */
export function round(value: number): number {
  return Math.round(value * 100) / 100 + 0
}

/**
 * Points written as in a drawing, `x,y x,y`.
 *
 * @example pointsOf('0,0 10,20') // [[0, 0], [10, 20]]
 */
export function pointsOf(text: string): Point[] {
  return text
    .trim()
    .split(/\s+/)
    .map((pair) => {
      const [x, y] = pair.split(',').map(Number)
      if (x === undefined || y === undefined || !Number.isFinite(x + y)) throw new Error(`"${pair}" is not a point.`)
      return [x, y]
    })
}

export function distance(a: Point, b: Point): number {
  return Math.sqrt((a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2)
}

/** The point that lies a share of the way from a to b. */
export function between(a: Point, b: Point, share: number): Point {
  return [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share]
}

type Curve = readonly [Point, Point, Point, Point]

/**
 * Centripetal Catmull–Rom through the points, as cubic curves: passes every point, makes no loops and no cusps.
 * Reference: Yuksel, Schaefer and Keyser, parameterisation of Catmull–Rom curves, 2011 (the centripetal case).
 */
function curvesThrough(points: readonly Point[], closed: boolean): Curve[] {
  const clean = points.filter((point, index) => index === 0 || distance(point, points[index - 1] ?? point) > 0.01)
  const count = clean.length
  const at = (index: number): Point => {
    const wanted = closed ? (index + count) % count : Math.min(Math.max(index, 0), count - 1)
    return clean[wanted] ?? [0, 0]
  }
  const last = closed ? count : count - 1
  return Array.from({ length: Math.max(last, 0) }, (_, index) =>
    curve(at(index - 1), at(index), at(index + 1), at(index + 2)),
  )
}

function curve(p0: Point, p1: Point, p2: Point, p3: Point): Curve {
  return [p1, handle(p0, p1, p2), handle(p3, p2, p1), p2]
}

/** The handle at `here` towards `next`; at an end of the line it lies a third of the way along. */
function handle(before: Point, here: Point, next: Point): Point {
  const d1 = Math.sqrt(distance(before, here))
  const d2 = Math.sqrt(distance(here, next))
  if (d1 < 1e-6) return between(here, next, 1 / 3)
  const own = 2 * d1 * d1 + 3 * d1 * d2 + d2 * d2
  const by = 3 * d1 * (d1 + d2)
  const along = (axis: 0 | 1) => (d1 * d1 * next[axis] - d2 * d2 * before[axis] + own * here[axis]) / by
  return [along(0), along(1)]
}

function toCommands(curves: readonly Curve[]): Command[] {
  return curves.map(([, a, b, end]) => [
    'C',
    round(a[0]),
    round(a[1]),
    round(b[0]),
    round(b[1]),
    round(end[0]),
    round(end[1]),
  ])
}

function moveTo(point: Point | undefined, how: 'M' | 'L'): Command[] {
  return point ? [[how, round(point[0]), round(point[1])]] : []
}

/** A smooth line through the points. */
export function smooth(points: readonly Point[]): Path {
  return [...moveTo(points[0], 'M'), ...toCommands(curvesThrough(points, false))]
}

/** A smooth closed outline through the points. */
export function smoothClosed(points: readonly Point[]): Path {
  return [...moveTo(points[0], 'M'), ...toCommands(curvesThrough(points, true)), ['Z']]
}

/** Several smooth lines joined at corners into one closed outline: a drum end or a bony rim stays sharp. */
export function joined(...lines: readonly (readonly Point[])[]): Path {
  const parts = lines.flatMap((line, index) => [
    ...moveTo(line[0], index === 0 ? 'M' : 'L'),
    ...toCommands(curvesThrough(line, false)),
  ])
  return [...parts, ['Z']]
}

export function straight(points: readonly Point[], closed = false): Path {
  const lines = points.flatMap((point, index) => moveTo(point, index === 0 ? 'M' : 'L'))
  return closed ? [...lines, ['Z']] : lines
}

export function circle(centre: Point, radius: number): Path {
  return ellipse(centre, radius, radius)
}

export function ellipse([x, y]: Point, wide: number, high: number): Path {
  const k = 0.5522848
  const c = (dx: number, dy: number) => [round(x + dx * wide), round(y + dy * high)] as const
  return [
    ['M', ...c(1, 0)],
    ['C', ...c(1, k), ...c(k, 1), ...c(0, 1)],
    ['C', ...c(-k, 1), ...c(-1, k), ...c(-1, 0)],
    ['C', ...c(-1, -k), ...c(-k, -1), ...c(0, -1)],
    ['C', ...c(k, -1), ...c(1, -k), ...c(1, 0)],
    ['Z'],
  ]
}

/** Dense points on the smooth line, `each` per stretch between two given points. */
export function sampled(points: readonly Point[], each: number, closed = false): Point[] {
  const curves = curvesThrough(points, closed)
  const dense = curves.flatMap((piece) => Array.from({ length: each }, (_, index) => on(piece, index / each)))
  const end = curves.at(-1)?.[3]
  return closed || !end ? dense : [...dense, end]
}

function on([a, b, c, d]: Curve, t: number): Point {
  const u = 1 - t
  const axis = (i: 0 | 1) => u * u * u * a[i] + 3 * u * u * t * b[i] + 3 * u * t * t * c[i] + t * t * t * d[i]
  return [axis(0), axis(1)]
}

/** The line moved sideways: a positive amount to the right hand of somebody who walks along it on the page. */
export function moved(line: readonly Point[], amount: number | ((share: number) => number)): Point[] {
  return line.map((point, index) => {
    const before = line[Math.max(index - 1, 0)] ?? point
    const after = line[Math.min(index + 1, line.length - 1)] ?? point
    const length = distance(before, after) || 1
    const by = typeof amount === 'number' ? amount : amount(index / Math.max(line.length - 1, 1))
    return [point[0] - ((after[1] - before[1]) / length) * by, point[1] + ((after[0] - before[0]) / length) * by]
  })
}

export function mirrorPoint([x, y]: Point): Point {
  return [round(canvas - x), y]
}

/** The same sign at the mirrored place: it moves, it does not turn round. */
export function movedToMirror(path: Path, [x]: Point): Path {
  const shift = (value: number) => round(value + canvas - 2 * x)
  return path.map((own): Command => {
    if (own[0] === 'Z') return own
    if (own[0] === 'C') return ['C', shift(own[1]), own[2], shift(own[3]), own[4], shift(own[5]), own[6]]
    return [own[0], shift(own[1]), own[2]]
  })
}

/** The other side of the body: x becomes 1000 − x, nothing else changes. */
export function mirrorPath(path: Path): Path {
  const flip = (x: number) => round(canvas - x)
  return path.map((step): Command => {
    if (step[0] === 'Z') return step
    if (step[0] === 'C') return ['C', flip(step[1]), step[2], flip(step[3]), step[4], flip(step[5]), step[6]]
    return [step[0], flip(step[1]), step[2]]
  })
}

/** The points a path passes, without its handles. */
export function cornersOf(path: Path): Point[] {
  return path.flatMap((step): Point[] => {
    if (step[0] === 'Z') return []
    return step[0] === 'C' ? [[step[5], step[6]]] : [[step[1], step[2]]]
  })
}
