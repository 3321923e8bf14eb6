import { fill } from '../outcome/finding.ts'
import { bullaOnTransverse } from './bulla.ts'
import { type Canal, canalOf, centreAt, lumenOf, stretch, walls } from './canal.ts'
import type { Drawing } from './drawing.ts'
import type { PlateFacts, TransverseFacts, TransverseLine } from './facts.ts'
import {
  between,
  circle,
  joined,
  moved,
  type Point,
  pointsOf,
  sampled,
  smooth,
  smoothClosed,
  straight,
} from './geometry.ts'
import { canalIsGone, isUnknown, type Narrowing, type PlateParameters } from './parameters.ts'
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

/** The right ear seen from the front, an unrolled section: what lies behind it is dotted, what lies before it is drawn over it. */
export function drawTransverse(
  drawing: Drawing,
  parameters: PlateParameters,
  all: PlateFacts,
  words: PlateWords,
): void {
  const facts = all[parameters.species].transverse
  const gone = canalIsGone(parameters)
  const pen: Pen = {
    drawing,
    parameters,
    facts,
    all,
    words,
    line: (name) => pointsOf(facts.lines[name].value),
    canal: canalOf(facts),
    gone,
  }
  drawBody(pen)
  drawBehind(pen)
  drawFlap(pen)
  drawCanal(pen)
  bullaOnTransverse(pen)
  drawDrum(pen)
  drawMass(pen)
  drawBefore(pen)
  drawCuts(pen)
}

export function label(pen: Pen, structure: StructureId, state: string | null = null) {
  return { text: pen.words.structures[structure], state, weight: 'anatomy' as const }
}

function drawBody(pen: Pen): void {
  const { drawing, line, gone } = pen
  const scar = line('scar')
  const low = scar.at(-1)?.[1] ?? 0
  const skin = gone ? line('skin').filter(([, y]) => y > low + 20) : line('skin')
  const top = gone ? [...scar].reverse() : [centreAt(pen.canal, 0.1), line('flapErectOuter')[1] ?? ([0, 0] as const)]
  drawing.add('surroundings', 'body', joined([...skin].reverse(), top, line('headSkin'), [[1000, 1000]]), {
    fill: 'tissue',
  })
  drawing.add('surroundings', 'body', smooth(line('headSkin')), { stroke: 'context' })
  drawing.add('surroundings', 'body', smooth(gone ? [...scar.slice(-1), ...skin] : skin), { stroke: 'context' })
  const muscle = smoothClosed(line('temporalMuscle'))
  drawing.add('surroundings', 'temporal-muscle', muscle, { fill: 'muscle', stroke: 'faint' })
  drawing.name('surroundings', 'temporal-muscle', middle(line('temporalMuscle')), label(pen, 'temporal-muscle'), muscle)
  const digastric = smoothClosed(line('digastric'))
  drawing.add('surroundings', 'digastric', digastric, { fill: 'muscle', stroke: 'faint' })
  drawing.name('surroundings', 'digastric', middle(line('digastric')), label(pen, 'digastric'), digastric)
  const gland = smoothClosed(line('parotid'))
  drawing.add('parotid', 'parotid', gland, { fill: 'gland', stroke: 'faint' })
  drawing.name('parotid', 'parotid', at(line('parotid'), 0.52, 26), label(pen, 'parotid'), gland)
  const brain = smoothClosed(line('brain'))
  drawing.add('surroundings', 'brain', brain, { fill: 'brain' })
  drawing.name('surroundings', 'brain', [800, 210], label(pen, 'brain'), brain)
  drawing.add('surroundings', 'body', smoothClosed(line('skull')), { fill: 'bone', stroke: 'bone' })
  drawing.add(
    'surroundings',
    'body',
    straight([
      [midline, 0],
      [midline, 1000],
    ]),
    { stroke: 'midline' },
  )
}

/** The mean of the points of an outline. */
function middle(points: readonly Point[]): Point {
  const sum = points.reduce<Point>((total, [x, y]) => [total[0] + x, total[1] + y], [0, 0])
  return [sum[0] / points.length, sum[1] / points.length]
}

/** A point of an outline at a share of its points, moved towards its middle. */
function at(points: readonly Point[], share: number, inwards: number): Point {
  const point = points[Math.floor(share * points.length)] ?? [0, 0]
  const centre = middle(points)
  const far = Math.sqrt((centre[0] - point[0]) ** 2 + (centre[1] - point[1]) ** 2) || 1
  return between(point, centre, inwards / far)
}

function drawBehind(pen: Pen): void {
  const { drawing, line } = pen
  drawing.add('carotid-branch', 'flap-artery', smooth(line('flapArtery')), { stroke: 'artery-behind' })
  drawing.name(
    'carotid-branch',
    'flap-artery',
    line('flapArtery')[2] ?? [0, 0],
    { ...label(pen, 'flap-artery', pen.words.behind) },
    band(line('flapArtery')),
  )
  for (const name of ['nerve', 'nerveBuccal'] as const) {
    drawing.add('facial-nerve', 'facial-nerve', smooth(line(name)), { stroke: 'nerve-behind' })
  }
  const nerve = line('nerve')
  drawing.add('facial-nerve', 'nerve-foramen', circle(nerve[0] ?? [0, 0], 7), { stroke: 'bone', fill: 'paper' })
  drawing.name(
    'facial-nerve',
    'facial-nerve',
    nerve[5] ?? [0, 0],
    { ...label(pen, 'facial-nerve', pen.words.behind) },
    band(nerve),
  )
}

/** The area of a line that a finger can hit. */
export function band(points: readonly Point[], half = 14) {
  const dense = sampled(points, 4)
  return joined(moved(dense, half), moved(dense, -half).reverse())
}

function drawFlap(pen: Pen): void {
  const { drawing, line, parameters, words } = pen
  const name = { erect: 'flapErect', drop: 'flapDrop', 'not-recorded': 'flapStump' }[parameters.carriage]
  const outer = line(`${name}Outer` as TransverseLine)
  const inner = line(`${name}Inner` as TransverseLine)
  const unknown = parameters.carriage === 'not-recorded'
  const path = joined(outer, [...inner].reverse())
  drawing.add('flap', 'flap', path, { fill: 'cartilage' })
  drawing.add('flap', 'flap', smooth(outer), { stroke: unknown ? 'unknown' : 'outline' })
  drawing.add('flap', 'flap', smooth(inner), { stroke: unknown ? 'unknown' : 'outline' })
  const [a, b] = [outer.at(-1), inner.at(-1)]
  if (a && b) {
    drawing.add('flap', 'flap', breakMark(a, b), { stroke: 'fine' })
    if (unknown) drawing.question('flap', 'flap', [(a[0] + b[0]) / 2, Math.min(a[1], b[1]) - 34])
  }
  const mid = Math.floor(outer.length / 2)
  drawing.name(
    'flap',
    'flap',
    between(outer[mid] ?? [0, 0], inner[mid] ?? [0, 0], 0.5),
    {
      ...label(pen, 'flap', words.carriage[parameters.carriage]),
      weight: unknown ? 'finding' : 'anatomy',
    },
    path,
  )
}

/** A zigzag across a cut end: the flap goes on, its length is not to scale. */
function breakMark(a: Point, b: Point) {
  const across = (share: number, off: number): Point => {
    const [x, y] = between(a, b, share)
    return [x - (b[1] - a[1]) * off, y + (b[0] - a[0]) * off]
  }
  return straight([
    across(-0.35, 0),
    across(0.3, 0),
    across(0.42, -0.3),
    across(0.58, 0.3),
    across(0.7, 0),
    across(1.35, 0),
  ])
}

/** Where the two halves of the head meet. */
const midline = 960

const skinThickness = 8

type Part = {
  readonly layer: 'vertical-canal' | 'horizontal-canal'
  readonly from: number
  readonly to: number
  readonly grade: Narrowing
  /** Where the question mark stands, and where the word points when one stands there. */
  readonly centre: number
  readonly beside: number
}

function partsOf({ facts, parameters }: Pen): readonly Part[] {
  const { bend } = facts.parts.value
  const { vertical, horizontal } = parameters.narrowing
  const across = 1 - bend
  return [
    { layer: 'vertical-canal', from: 0, to: bend, grade: vertical, centre: bend * 0.55, beside: bend * 0.3 },
    {
      layer: 'horizontal-canal',
      from: bend,
      to: 1,
      grade: horizontal,
      centre: bend + across * 0.5,
      beside: bend + across * 0.3,
    },
  ]
}

/** From the cartilage inwards: tube of cartilage, ring inside its end, skin lining, and the lumen that is left. */
function drawCanal(pen: Pen): void {
  const outside = walls(pen.canal, (share) => skinThickness + 17 + 4 * share)
  if (pen.gone) {
    drawGhost(pen, outside)
    return
  }
  const parts = partsOf(pen)
  const lumen = lumenOf(pen.canal, pen.parameters.narrowing, pen.all.areaLost.value)
  for (const part of parts) drawCartilage(pen, part, outside)
  drawRing(pen)
  for (const part of parts) drawLumen(pen, part, lumen, outside)
  nameCartilage(pen)
}

const bothWalls = ['outer', 'inner'] as const

function cartilageLook({ parameters }: Pen) {
  return {
    fill: parameters.mineral === 'yes' ? ('mineral' as const) : ('cartilage' as const),
    edge: parameters.mineral === 'not-assessed' ? ('unknown' as const) : ('outline' as const),
  }
}

function drawCartilage(pen: Pen, { layer, from, to }: Part, outside: Canal): void {
  const { drawing, canal, facts } = pen
  const { auricularEnd } = facts.parts.value
  const look = cartilageLook(pen)
  const inside = walls(canal, (share) => skinThickness + 6 + 4 * share)
  const start = Math.max(from, 0.02)
  const end = Math.min(to, auricularEnd)
  for (const wall of bothWalls) {
    const [near, far] = [stretch(inside, start, end)[wall], stretch(outside, start, end)[wall]]
    drawing.add(layer, 'cartilage', joined(near, [...far].reverse()), { fill: look.fill })
    drawing.add(layer, 'cartilage', smooth(far), { stroke: look.edge })
    drawing.add(layer, 'cartilage', smooth(near), { stroke: 'fine' })
    if (end === auricularEnd) {
      drawing.add(layer, 'cartilage', straight([near.at(-1) ?? [0, 0], far.at(-1) ?? [0, 0]]), { stroke: look.edge })
    }
  }
}

/** The ring lies inside the end of the tube and ends over the bony rim. */
function drawRing(pen: Pen): void {
  const { drawing, canal, facts } = pen
  const { auricularEnd, annularStart, annularEnd } = facts.parts.value
  const { fill: filled, edge } = cartilageLook(pen)
  const past = (share: number) => Math.max(0, (share - auricularEnd) / (annularEnd - auricularEnd))
  const near = stretch(
    walls(canal, (share) => 7 + 9 * past(share)),
    annularStart,
    annularEnd,
  )
  const far = stretch(
    walls(canal, (share) => 12 + 16 * past(share)),
    annularStart,
    annularEnd,
  )
  for (const wall of bothWalls) {
    drawing.add('horizontal-canal', 'annular-cartilage', joined(near[wall], [...far[wall]].reverse()), {
      fill: filled,
      stroke: edge,
    })
  }
  const roof = far.inner[Math.floor(far.inner.length * 0.6)] ?? [0, 0]
  drawing.name('horizontal-canal', 'annular-cartilage', roof, label(pen, 'annular-cartilage'), null)
}

function drawLumen(pen: Pen, part: Part, lumen: Canal, outside: Canal): void {
  const { drawing, canal, words } = pen
  const { layer, from, to, grade } = part
  const unseen = isUnknown(grade)
  const here = stretch(lumen, from, to)
  const skin = stretch(walls(canal, skinThickness), from, to)
  for (const wall of bothWalls) {
    drawing.add(layer, layer, joined(here[wall], [...skin[wall]].reverse()), { fill: 'lining' })
  }
  drawing.add(layer, layer, to === 1 ? joined(here.outer, drumLine(pen), [...here.inner].reverse()) : tube(here), {
    fill: unseen ? 'unknown' : 'paper',
  })
  const edge = unseen ? 'unknown' : grade === 'none' ? 'outline' : 'finding'
  for (const wall of bothWalls) {
    drawing.add(layer, layer, smooth(skin[wall]), { stroke: 'faint' })
    drawing.add(layer, layer, smooth(here[wall]), { stroke: edge })
  }
  if (unseen) drawing.question(layer, layer, centreAt(canal, part.centre))
  const point = centreAt(canal, unseen ? part.beside : part.centre)
  const weight = grade === 'none' ? ('anatomy' as const) : ('finding' as const)
  drawing.name(
    layer,
    layer,
    point,
    { ...label(pen, layer, words.narrowing[grade]), weight },
    tube(stretch(outside, from, to)),
  )
}

/** The drum from its lower, medial edge to its upper, lateral one. */
function drumLine({ line }: Pen): Point[] {
  return [...line('drumUpper'), ...line('drumLower').slice(1)].reverse()
}

function nameCartilage(pen: Pen): void {
  const { drawing, canal, facts, parameters, words } = pen
  const { bend, auricularEnd } = facts.parts.value
  const layer = drawing.has('vertical-canal') ? 'vertical-canal' : 'horizontal-canal'
  const share = layer === 'vertical-canal' ? auricularEnd * 0.42 : (bend + auricularEnd) / 2
  const spot = stretch(walls(canal, 20), 0, share).outer.at(-1) ?? [0, 0]
  const weight = parameters.mineral === 'no' ? ('anatomy' as const) : ('finding' as const)
  drawing.name(
    layer,
    'cartilage',
    spot,
    { ...label(pen, 'cartilage', words.mineral[parameters.mineral]), weight },
    null,
  )
  const tragus = smoothClosed(pen.line('tragus'))
  drawing.add('vertical-canal', 'tragus', tragus, { fill: cartilageLook(pen).fill, stroke: 'outline' })
  drawing.name('vertical-canal', 'tragus', pen.line('tragus')[2] ?? [0, 0], label(pen, 'tragus'), tragus)
}

function tube(canal: Canal) {
  return joined(canal.outer, [...canal.inner].reverse())
}

/** What was taken away, as a ghost: one thin dotted outline, nothing inside. */
function drawGhost(pen: Pen, outside: Canal): void {
  const { drawing, words, facts } = pen
  const ghost = stretch(outside, 0, facts.parts.value.annularEnd)
  drawing.add('taken-away', 'vertical-canal', tube(ghost), { stroke: 'removed' })
  const scar = pen.line('scar')
  drawing.add('incision', 'scar', smooth(scar), { stroke: 'scar' })
  drawing.add('incision', 'scar', stitches(scar), { stroke: 'scar' })
  drawing.name('incision', 'scar', at(scar, 0.5, 0), { ...label(pen, 'scar'), weight: 'surgery' }, band(scar))
  drawing.name(
    'taken-away',
    'vertical-canal',
    centreAt(pen.canal, 0.3),
    {
      ...label(pen, 'vertical-canal', words.removal['taken-away']),
      weight: 'surgery',
    },
    tube(stretch(outside, 0, facts.parts.value.bend)),
  )
  drawing.name(
    'taken-away',
    'horizontal-canal',
    centreAt(pen.canal, 0.7),
    {
      ...label(pen, 'horizontal-canal', words.removal['taken-away']),
      weight: 'surgery',
    },
    tube(stretch(outside, facts.parts.value.bend, 1)),
  )
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

function drawDrum(pen: Pen): void {
  const { drawing, line, parameters, words, gone } = pen
  if (!gone)
    drawing.add('horizontal-canal', 'bony-meatus', smoothClosed(line('meatusFloor')), { fill: 'bone', stroke: 'bone' })
  const roof = line('meatusRoof')[2] ?? [0, 0]
  drawing.name('horizontal-canal', 'bony-meatus', roof, label(pen, 'bony-meatus'), null)
  for (const bone of ['malleus', 'incus', 'stapes'] as const) {
    if (gone && bone === 'malleus') continue
    drawing.add('bulla', 'ossicles', smooth(line(bone)), { stroke: 'ossicle' })
  }
  drawing.name('bulla', 'ossicles', line('incus')[1] ?? [0, 0], label(pen, 'ossicles'), null)
  if (gone) return
  const lower = sampled(line('drumLower'), 8)
  const state = parameters.drum
  const hit = band([...line('drumUpper'), ...line('drumLower').slice(1)], 9)
  const unseen = isUnknown(state)
  const stroke = unseen ? 'unknown' : 'drum'
  drawing.add('drum', 'drum', smooth(line('drumUpper')), { stroke })
  if (state === 'ruptured') {
    const third = Math.floor(lower.length * 0.36)
    const end = Math.floor(lower.length * 0.7)
    drawing.add('drum', 'drum', smooth(lower.slice(0, third)), { stroke: 'drum' })
    drawing.add('drum', 'drum', smooth(lower.slice(end)), { stroke: 'drum' })
    for (const index of [third - 1, end])
      drawing.add('drum', 'drum', torn(lower[index] ?? [0, 0]), { stroke: 'finding' })
  } else drawing.add('drum', 'drum', smooth(lower), { stroke })
  const point = lower[Math.floor(lower.length * (state === 'ruptured' ? 0.53 : 0.72))] ?? [0, 0]
  if (unseen) drawing.question('drum', 'drum', [point[0] - 52, point[1] - 6])
  drawing.name(
    'drum',
    'drum',
    point,
    { ...label(pen, 'drum', words.drum[state]), weight: state === 'intact' ? 'anatomy' : 'finding' },
    hit,
  )
}

function torn([x, y]: Point) {
  return straight([
    [x - 9, y + 4],
    [x, y],
    [x + 9, y - 4],
  ])
}

function drawMass(pen: Pen): void {
  const { drawing, parameters, words, canal, facts, line, gone } = pen
  const { mass } = parameters
  if (mass.kind !== 'placed') return
  if (gone && mass.place !== 'bulla') return
  const { bend } = facts.parts.value
  const share = { opening: 0.06, vertical: bend * 0.6, bend, horizontal: bend + (1 - bend) * 0.45 }
  const size = { small: 13, medium: 21, large: 32, 'not-recorded': 21 }[mass.size]
  const index = mass.place === 'bulla' ? -1 : Math.round(share[mass.place] * (canal.outer.length - 1))
  const wall =
    mass.place === 'bulla'
      ? between(line('shell')[4] ?? [0, 0], line('shell')[2] ?? [0, 0], 0.35)
      : (canal.outer[index] ?? [0, 0])
  const inwards = mass.place === 'bulla' ? (line('promontory')[4] ?? [0, 0]) : (canal.inner[index] ?? [0, 0])
  const far = Math.sqrt((inwards[0] - wall[0]) ** 2 + (inwards[1] - wall[1]) ** 2) || 1
  const centre = between(wall, inwards, (size * 0.7) / far)
  const lobes = [1, 0.86, 1.06, 0.9, 1, 0.84, 1.05, 0.92]
  const outline = smoothClosed(
    lobes.map((lobe, i): Point => {
      const [c, s] = compass[i] ?? [1, 0]
      return [centre[0] + c * lobe * size, centre[1] + s * lobe * size]
    }),
  )
  const layer = mass.place === 'bulla' ? 'bulla' : mass.place === 'horizontal' ? 'horizontal-canal' : 'vertical-canal'
  drawing.add(layer, 'mass', outline, { fill: 'mass', stroke: mass.size === 'not-recorded' ? 'unknown' : 'finding' })
  const state = fill(words.massPlaced, { place: words.massPlaces[mass.place], size: words.massSizes[mass.size] })
  drawing.name(layer, 'mass', centre, { ...label(pen, 'mass', state), weight: 'finding' }, outline)
}

const d = Math.SQRT1_2
const compass: readonly Point[] = [
  [1, 0],
  [d, d],
  [0, 1],
  [-d, d],
  [-1, 0],
  [-d, -d],
  [0, -1],
  [d, -d],
]

/** What lies rostral to the section is drawn over it. */
function drawBefore(pen: Pen): void {
  const { drawing, line } = pen
  drawing.add('facial-nerve', 'nerve-to-lids', smooth(line('nerveToLids')), { stroke: 'nerve' })
  drawing.name(
    'facial-nerve',
    'nerve-to-lids',
    line('nerveToLids')[4] ?? [0, 0],
    { ...label(pen, 'nerve-to-lids', pen.words.before) },
    band(line('nerveToLids')),
  )
  for (const name of ['carotid', 'maxillaryArtery'] as const) {
    drawing.add('carotid-branch', 'external-carotid', smooth(line(name)), { stroke: 'artery' })
  }
  drawing.add('carotid-branch', 'temple-artery', smooth(line('templeArtery')), { stroke: 'artery' })
  drawing.name(
    'carotid-branch',
    'external-carotid',
    line('carotid')[2] ?? [0, 0],
    label(pen, 'external-carotid'),
    band(line('carotid')),
  )
  drawing.name(
    'carotid-branch',
    'temple-artery',
    line('templeArtery')[5] ?? [0, 0],
    { ...label(pen, 'temple-artery', pen.words.before) },
    band(line('templeArtery')),
  )
  drawing.add('retroglenoid-vein', 'retroglenoid-vein', smooth(line('vein')), { stroke: 'vein' })
  drawing.add('retroglenoid-vein', 'retroglenoid-vein', circle(line('vein')[0] ?? [0, 0], 8), {
    fill: 'paper',
    stroke: 'bone',
  })
  drawing.name(
    'retroglenoid-vein',
    'retroglenoid-vein',
    line('vein')[4] ?? [0, 0],
    { ...label(pen, 'retroglenoid-vein', pen.words.before) },
    band(line('vein')),
  )
  drawing.add('surroundings', 'hypoglossal-nerve', smooth(line('hypoglossal')), { stroke: 'nerve' })
  drawing.name(
    'surroundings',
    'hypoglossal-nerve',
    line('hypoglossal')[2] ?? [0, 0],
    label(pen, 'hypoglossal-nerve'),
    band(line('hypoglossal')),
  )
}

function drawCuts(pen: Pen): void {
  const { drawing, line, parameters, words, canal } = pen
  const { surgery } = parameters
  if (surgery.kind !== 'planned') return
  const cut = (
    layer: 'incision' | 'taken-away',
    structure: 'incision' | 'cut-at-meatus',
    points: readonly Point[],
    state: string | null,
  ) => {
    drawing.add(layer, structure, smooth(points), { stroke: 'cut' })
    drawing.name(
      layer,
      structure,
      points[Math.floor(points.length / 2)] ?? [0, 0],
      { ...label(pen, structure, state), weight: 'surgery' },
      band(points),
    )
  }
  if (surgery.incision === 'T-shaped') cut('incision', 'incision', line('stemCut'), words.incision['T-shaped'])
  if (surgery.incision === 'circular') {
    const outer = canal.outer[0] ?? [0, 0]
    const inner = canal.inner[0] ?? [0, 0]
    drawing.add(
      'incision',
      'incision',
      straight([
        [inner[0] - 22, inner[1] + 12],
        [inner[0] + 40, inner[1] + 4],
      ]),
      { stroke: 'cut' },
    )
    cut(
      'incision',
      'incision',
      [
        [outer[0] - 58, outer[1] - 6],
        [outer[0] - 30, outer[1] - 2],
        [outer[0] + 12, outer[1] + 10],
      ],
      words.incision.circular,
    )
  }
  if (surgery.canal === 'taken-away') {
    const removed = stretch(walls(canal, 34), 0, pen.facts.parts.value.annularEnd)
    drawing.add('taken-away', 'cut-at-meatus', tube(removed), { stroke: 'planned' })
    cut('taken-away', 'cut-at-meatus', line('meatusCut'), null)
  }
}
