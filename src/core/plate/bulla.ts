import { joined, moved, type Path, type Point, pointsOf, sampled, smooth, smoothClosed } from './geometry.ts'
import { isUnknown, operated, type PlateParameters } from './parameters.ts'
import { label, type Pen } from './pen.ts'
import type { FillRole } from './scene.ts'
import type { PlateWords } from './words.ts'

/** Middle ear of the transverse plate: wall, rooms, what fills them, promontory, inner ear, tube; and the opening. */
export function bullaOnTransverse(pen: Pen): void {
  drawWall(pen)
  drawRooms(pen)
  drawMedial(pen)
  drawOpening(pen)
}

/** How thick the wall is drawn; a wall nobody assessed has the thin outline and a dashed edge. */
export function wallThickness(thin: number, state: string, times: number): number {
  return state === 'thick' ? thin * times : thin
}

function drawWall(pen: Pen): void {
  const { drawing, parameters, facts, all } = pen
  const inner = sampled(pen.line('shell'), 6)
  const thick = wallThickness(facts.wall.value, parameters.bullaWall, all.thickWallTimes.value)
  const outer = moved(inner, thick)
  const opened = parameters.surgery.kind === 'done' && parameters.surgery.bulla === 'opened'
  const ring = joined(inner, [...outer].reverse())
  const stroke = isUnknown(parameters.bullaWall) ? 'unknown' : 'bone'
  const gap = opened ? openingShares : parameters.bullaWall === 'eaten-away' ? lysisShares : null
  if (!gap) {
    drawing.add('bulla', 'bulla', ring, { fill: 'bone' })
    drawing.add('bulla', 'bulla', smooth(outer), { stroke })
    drawing.add('bulla', 'bulla', smooth(inner), { stroke: 'fine' })
    return
  }
  for (const [from, to] of gap) {
    const a = cut(inner, from, to)
    const b = cut(outer, from, to)
    const ragged = parameters.bullaWall === 'eaten-away'
    drawing.add('bulla', 'bulla', ragged ? gnawed(a, b) : joined(a, [...b].reverse()), {
      fill: 'bone',
      stroke: ragged ? 'finding' : 'bone',
    })
  }
}

/** What stays of the wall: shares of its length, from the floor of the meatus round the bulla to the petrous bone. */
const openingShares = [[0.4, 1]] as const
const lysisShares = [
  [0, 0.2],
  [0.27, 0.36],
  [0.47, 0.5],
  [0.56, 1],
] as const

function cut(line: readonly Point[], from: number, to: number): Point[] {
  const last = line.length - 1
  return line.slice(Math.round(from * last), Math.round(to * last) + 1)
}

/** A piece of wall with moth-eaten ends. */
function gnawed(inner: readonly Point[], outer: readonly Point[]): Path {
  const a = inner.at(-1) ?? [0, 0]
  const b = outer.at(-1) ?? [0, 0]
  const end: Point[] = [
    [a[0] + (b[0] - a[0]) * 0.35 + 5, a[1] + (b[1] - a[1]) * 0.35 - 4],
    [a[0] + (b[0] - a[0]) * 0.6 - 5, a[1] + (b[1] - a[1]) * 0.6 + 4],
  ]
  const shaken = (line: readonly Point[], by: number) =>
    line.map(([x, y], index): Point => [x + (index % 2 === 0 ? by : -by), y + (index % 3 === 0 ? by : -by)])
  return joined(shaken(inner, 1.3), end, shaken(outer, 1.6).reverse())
}

function roomFill(pen: Pen): FillRole {
  const { parameters } = pen
  if (parameters.surgery.kind === 'done' && parameters.surgery.bulla === 'opened') return 'paper'
  return { air: 'air', filled: 'filled', 'not-assessed': 'unknown' }[parameters.bullaContent] as FillRole
}

function drawRooms(pen: Pen): void {
  const { drawing, facts, line, parameters, words } = pen
  const fill = roomFill(pen)
  const drum = [...line('drumUpper'), ...line('drumLower').slice(1)]
  const { rooms } = facts
  const taken = rooms.kind === 'one' && parameters.surgery.kind === 'done' && parameters.surgery.bulla === 'opened'
  const shellLine = line('shell')
  const whole = joined(line('cavityRoof'), line('promontory'), [...shellLine].reverse(), [...drum].reverse())
  if (rooms.kind === 'one') {
    drawing.add('bulla', 'bulla', whole, { fill })
    // The ridge stands on the wall that was taken.
    if (!taken) drawRidge(pen, pointsOf(rooms.ridge.value))
  } else {
    drawing.add('bulla', 'septum', whole, { fill: 'bone' })
    for (const room of [rooms.upper, rooms.lower]) {
      drawing.add('bulla', 'bulla', smoothClosed(pointsOf(room.value)), { fill, stroke: 'fine' })
    }
    drawing.add('bulla', 'septum', smoothClosed(pointsOf(rooms.gap.value)), { fill, stroke: 'nerve-behind' })
  }
  if (!taken) {
    const [, spot] = pointsOf((rooms.kind === 'one' ? rooms.ridge : rooms.gap).value)
    const named = { ...label(pen, 'septum'), text: words.septum[rooms.kind] }
    drawing.name('bulla', 'septum', spot ?? [0, 0], named, null)
  }
  const centre: Point = middleOf(shellLine)
  const spot: Point = [centre[0] + 24, centre[1] + 8]
  if (roomFill(pen) === 'unknown') drawing.question('bulla', 'bulla', [spot[0], spot[1] - 30])
  if (isUnknown(parameters.bullaWall)) {
    const low = moved(shellLine, 30)[Math.floor(shellLine.length / 2)] ?? spot
    drawing.question('bulla', 'bulla', low, 13)
  }
  const normal = parameters.bullaContent === 'air' && parameters.bullaWall === 'normal'
  drawing.name(
    'bulla',
    'bulla',
    spot,
    {
      ...label(pen, 'bulla', bullaState(parameters, words)),
      weight: normal ? 'anatomy' : 'finding',
    },
    whole,
  )
}

/** A low spur of bone that rises from the wall and ends free in the room. */
function drawRidge({ drawing }: Pen, line: readonly Point[]): void {
  const [foot, next] = [line[0] ?? [0, 0], line[1] ?? [0, 0]]
  const rooted: Point = [foot[0] * 1.6 - next[0] * 0.6, foot[1] * 1.6 - next[1] * 0.6]
  const ridge = sampled([rooted, ...line], 4)
  const thick = (share: number) => 6.5 * (1 - share) + 0.8
  const [near, far] = [moved(ridge, thick), moved(ridge, (share) => -thick(share))]
  drawing.add('bulla', 'septum', joined(near, [...far].reverse()), { fill: 'bone' })
  drawing.add('bulla', 'septum', smooth([...near.slice(3), ...far.slice(3).reverse()]), { stroke: 'fine' })
}

function middleOf(points: readonly Point[]): Point {
  const sum = points.reduce<Point>((total, [x, y]) => [total[0] + x, total[1] + y], [0, 0])
  return [sum[0] / points.length, sum[1] / points.length]
}

function drawMedial(pen: Pen): void {
  const { drawing, line, facts } = pen
  const petrous = joined(line('promontory'), line('petrous').slice(0, -4).reverse())
  drawing.add('bulla', 'inner-ear', petrous, { fill: 'bone', stroke: 'fine' })
  drawing.add('bulla', 'promontory', smooth(line('promontory')), { stroke: 'bone' })
  drawing.add('bulla', 'bulla', smooth(line('cavityRoof')), { stroke: 'bone' })
  const centre = pointsOf(facts.cochlea.value)[0] ?? [0, 0]
  drawing.add('bulla', 'inner-ear', smooth(spiral(centre)), { stroke: 'fine' })
  drawing.name('bulla', 'inner-ear', [centre[0] + 48, centre[1] - 22], label(pen, 'inner-ear'), petrous)
  for (const window of ['ovalWindow', 'roundWindow'] as const) {
    drawing.add('bulla', 'promontory', smooth(line(window)), { stroke: 'drum' })
  }
  drawing.name('bulla', 'promontory', line('promontory')[2] ?? [0, 0], label(pen, 'promontory'), null)
  const tube = line('auditoryTube')
  const wide = joined(moved(tube, 7), moved(tube, -7).reverse())
  drawing.add('bulla', 'auditory-tube', wide, { fill: 'paper' })
  for (const side of [7, -7]) drawing.add('bulla', 'auditory-tube', smooth(moved(tube, side)), { stroke: 'fine' })
  drawing.name('bulla', 'auditory-tube', tube[2] ?? [0, 0], label(pen, 'auditory-tube'), wide)
}

const turn: readonly Point[] = [
  [1, 0],
  [Math.SQRT1_2, Math.SQRT1_2],
  [0, 1],
  [-Math.SQRT1_2, Math.SQRT1_2],
  [-1, 0],
  [-Math.SQRT1_2, -Math.SQRT1_2],
  [0, -1],
  [Math.SQRT1_2, -Math.SQRT1_2],
]

function spiral([x, y]: Point): Point[] {
  return Array.from({ length: 21 }, (_, index): Point => {
    const [c, s] = turn[index % 8] ?? [1, 0]
    const radius = 35 - index * 1.6
    return [x + c * radius, y + s * radius]
  })
}

function drawOpening(pen: Pen): void {
  const { drawing, line, parameters, words } = pen
  const surgery = operated(parameters.surgery)
  if (surgery?.bulla !== 'opened') return
  const inner = cut(sampled(line('shell'), 6), 0, 0.4)
  const outer = moved(inner, pen.facts.wall.value * 1.6)
  const piece = joined(inner, [...outer].reverse())
  const planned = surgery.kind === 'planned'
  drawing.add(
    'opened-bulla',
    'bulla-opening',
    piece,
    planned ? { fill: 'opened', stroke: 'planned' } : { stroke: 'removed' },
  )
  if (planned) drawing.add('opened-bulla', 'bulla-opening', smooth(line('bullaCut')), { stroke: 'cut' })
  drawing.name(
    'opened-bulla',
    'bulla-opening',
    outer[Math.floor(outer.length * 0.6)] ?? [0, 0],
    {
      ...label(pen, 'bulla-opening', words.surgery[surgery.kind]),
      weight: 'surgery',
    },
    piece,
  )
  if (!planned) return
  const wedge = smoothClosed(line('leaveAlone'))
  drawing.add('opened-bulla', 'leave-alone', wedge, { fill: 'leave-alone', stroke: 'faint' })
  drawing.name(
    'opened-bulla',
    'leave-alone',
    line('leaveAlone')[1] ?? [0, 0],
    { ...label(pen, 'leave-alone'), weight: 'surgery' },
    wedge,
  )
}

/** What is said of the bulla: after it was opened it no longer holds what it held. */
export function bullaState(parameters: PlateParameters, words: PlateWords): string {
  const opened = parameters.surgery.kind === 'done' && parameters.surgery.bulla === 'opened'
  const content = opened ? words.opening.opened : words.bullaContent[parameters.bullaContent]
  return `${content}; ${words.bullaWall[parameters.bullaWall]}`
}
