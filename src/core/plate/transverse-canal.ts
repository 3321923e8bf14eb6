import { type Canal, centreAt, lumenOf, stretch, walls } from './canal.ts'
import { between, distance, joined, type Point, smooth, smoothClosed, straight } from './geometry.ts'
import { isUnknown, type Narrowing } from './parameters.ts'
import { at, band, label, type Pen, stitches } from './pen.ts'

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
export function drawCanal(pen: Pen): void {
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
  drawAnthelix(pen, lumen)
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

/** A low ridge on the medial wall, where flap becomes funnel: opposite the tragus. */
function drawAnthelix(pen: Pen, lumen: Canal): void {
  const { drawing } = pen
  const wall = stretch(lumen, 0, 0.14)
  const height = [0, 5, 12, 16, 12, 5, 0]
  const crest = height.map((units, index): Point => {
    const at = Math.round((index / (height.length - 1)) * (wall.inner.length - 1))
    const foot = wall.inner[at] ?? [0, 0]
    const across = wall.outer[at] ?? foot
    const wide = distance(foot, across) || 1
    return between(foot, across, Math.min(units / wide, 0.3))
  })
  drawing.add('vertical-canal', 'anthelix', joined(crest, [...wall.inner].reverse()), { fill: 'lining' })
  drawing.add('vertical-canal', 'anthelix', smooth(crest), { stroke: 'fine' })
  drawing.name('vertical-canal', 'anthelix', crest[3] ?? [0, 0], label(pen, 'anthelix'), band(crest, 8))
}

export function tube(canal: Canal) {
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
