import { fill } from '../outcome/finding.ts'
import { between, circle, joined, moved, type Point, sampled, smooth, smoothClosed } from './geometry.ts'
import { type LateralPen, name, nibble } from './lateral-pen.ts'
import { isUnknown, type Layer } from './parameters.ts'
import { band, middle } from './pen.ts'

export function drawMeatus(pen: LateralPen): void {
  const { drawing, parameters, words, gone } = pen
  const centre = pen.line('meatus')[0] ?? [0, 0]
  const radius = pen.parameters.species === 'cat' ? 34 : 42
  const ring = circle(centre, radius)
  drawing.add('horizontal-canal', 'bony-meatus', circle(centre, radius + 9), { fill: 'bone', stroke: 'bone' })
  drawing.add('horizontal-canal', 'bony-meatus', ring, { fill: 'paper', stroke: 'fine' })
  name(
    pen,
    'horizontal-canal',
    'bony-meatus',
    [centre[0] - radius * 0.74, centre[1] + radius * 0.9],
    circle(centre, radius + 9),
  )
  drawing.add('horizontal-canal', 'nerve-foramen', smooth(pen.line('ridge')), { stroke: 'bone' })
  if (gone) return
  const state = parameters.drum
  const unseen = isUnknown(state)
  const [x, y] = centre
  drawing.add('drum', 'drum', circle(centre, radius - 8), {
    stroke: unseen ? 'unknown' : 'drum',
    fill: unseen ? 'unknown' : 'lining',
  })
  if (unseen) drawing.question('drum', 'drum', [x, y], 15)
  else
    drawing.add(
      'drum',
      'drum',
      smooth([
        [x + 4, y - radius * 0.62],
        [x + 1, y - 6],
        [x - 10, y + 8],
      ]),
      { stroke: 'fine' },
    )
  if (state === 'ruptured')
    drawing.add('drum', 'drum', smoothClosed(nibble([x + 5, y + 12])), { fill: 'paper', stroke: 'finding' })
  name(pen, 'drum', 'drum', [x + radius * 0.4, y + radius * 0.1], ring, {
    state: words.drum[state],
    weight: state === 'intact' ? 'anatomy' : 'finding',
  })
}

export function drawCanal(pen: LateralPen): void {
  if (pen.gone) {
    const tube = tubeOf(pen)
    const state = pen.words.removal['taken-away']
    pen.drawing.add('taken-away', 'vertical-canal', tube, { stroke: 'removed' })
    name(pen, 'taken-away', 'vertical-canal', inTube(pen, 2, 0.3), tube, { state, weight: 'surgery' })
    return
  }
  drawTube(pen)
  drawMouth(pen)
  drawLips(pen)
  nameParts(pen)
  drawMass(pen)
}

function tubeOf({ line }: LateralPen) {
  return joined(line('verticalLeft'), [...line('verticalRight')].reverse())
}

/** A point between the two edges of the vertical canal. */
function inTube({ line }: LateralPen, step: number, share: number): Point {
  return between(line('verticalLeft')[step] ?? [0, 0], line('verticalRight')[step] ?? [0, 0], share)
}

function cartilageFill({ parameters }: LateralPen) {
  return parameters.mineral === 'yes' ? ('mineral' as const) : ('cartilage' as const)
}

const cartilageWidth = 15

/** How much of the width of the lumen is left; what was not seen keeps the full outline and is drawn as unknown. */
function openShare({ parameters, all }: LateralPen): number {
  const grade = parameters.narrowing.vertical
  if (grade === 'could-not-see' || grade === 'not-assessed') return 1
  return Math.max(Math.sqrt(1 - all.areaLost.value[grade]), 0.06)
}

function drawTube(pen: LateralPen): void {
  const { drawing, parameters, line } = pen
  const unseen = isUnknown(parameters.narrowing.vertical)
  const edge = parameters.mineral === 'not-assessed' ? 'unknown' : 'outline'
  const [left, right] = [sampled(line('verticalLeft'), 5), sampled(line('verticalRight'), 5)]
  const [leftIn, rightIn] = [moved(left, -cartilageWidth), moved(right, cartilageWidth)]
  const sparse = (points: readonly Point[]) => smooth(points.filter((_, index) => index % 3 === 0))
  const squeezed = (from: readonly Point[], to: readonly Point[]) =>
    from
      .slice(6, -12)
      .map((point, index) => between(between(point, to[index + 6] ?? point, 0.5), point, openShare(pen) * 0.94))
  for (const [outer, inner, other] of [
    [left, leftIn, rightIn],
    [right, rightIn, leftIn],
  ] as const) {
    const wall = joined(outer.slice(0, -7), inner.slice(0, -7).reverse())
    drawing.add('vertical-canal', 'cartilage', wall, { fill: cartilageFill(pen) })
    drawing.add('vertical-canal', 'cartilage', sparse(outer), { stroke: edge })
    drawing.add('vertical-canal', 'cartilage', sparse(inner.slice(0, -7)), { stroke: 'fine' })
    const lumen = sparse(squeezed(inner, other))
    drawing.add('vertical-canal', 'vertical-canal', lumen, { stroke: unseen ? 'unknown' : 'faint' })
  }
  if (unseen) drawing.question('vertical-canal', 'vertical-canal', inTube(pen, 2, 0.55))
}

function drawMouth(pen: LateralPen): void {
  const { drawing, parameters, line } = pen
  const grade = parameters.narrowing.vertical
  const opening = line('opening')
  const centre = middle(opening)
  const hole = smoothClosed(opening.map((point) => between(centre, point, openShare(pen))))
  drawing.add('vertical-canal', 'opening', smoothClosed(opening), { fill: 'lining', stroke: 'outline' })
  drawing.add(
    'vertical-canal',
    'opening',
    hole,
    isUnknown(grade)
      ? { fill: 'unknown', stroke: 'unknown' }
      : { fill: 'paper', stroke: grade === 'none' ? 'fine' : 'finding' },
  )
}

/** The ridge on the medial wall above the opening, where the flap becomes the funnel. */
function drawAnthelix(pen: LateralPen): void {
  const opening = pen.line('opening')
  const centre = middle(opening)
  // Above the circular cut, which stays below it.
  const upper = opening
    .slice(0, 5)
    .map(([x, y]): Point => [centre[0] + (x - centre[0]) * 1.12, centre[1] + (y - centre[1]) * 1.95])
  const ridge = sampled(upper, 4).slice(3, -3)
  pen.drawing.add('vertical-canal', 'anthelix', smooth(ridge), { stroke: 'outline' })
  pen.drawing.add('vertical-canal', 'anthelix', smooth(moved(ridge, -7).slice(1, -1)), { stroke: 'faint' })
  name(pen, 'vertical-canal', 'anthelix', ridge[4], band(ridge, 10))
}

function drawLips(pen: LateralPen): void {
  drawAnthelix(pen)
  const { drawing, line } = pen
  for (const [part, spot] of [
    ['tragus', 0],
    ['antitragus', 3],
  ] as const) {
    const path = smoothClosed(line(part))
    drawing.add('vertical-canal', part, path, { fill: cartilageFill(pen), stroke: 'outline' })
    name(pen, 'vertical-canal', part, line(part)[spot], path)
  }
}

function nameParts(pen: LateralPen): void {
  const { parameters, words } = pen
  const { vertical, horizontal } = parameters.narrowing
  const weightOf = (clear: boolean) => (clear ? ('anatomy' as const) : ('finding' as const))
  name(pen, 'vertical-canal', 'vertical-canal', inTube(pen, 2, 0.3), tubeOf(pen), {
    state: words.narrowing[vertical],
    weight: weightOf(vertical === 'none'),
  })
  name(pen, 'vertical-canal', 'cartilage', inTube(pen, 3, 0.93), null, {
    state: words.mineral[parameters.mineral],
    weight: weightOf(parameters.mineral === 'no'),
  })
  name(pen, 'horizontal-canal', 'horizontal-canal', inTube(pen, 4, 0.45), null, {
    state: words.narrowing[horizontal],
    weight: weightOf(horizontal === 'none'),
  })
}

function drawMass(pen: LateralPen): void {
  const { parameters, words, drawing } = pen
  const { mass } = parameters
  if (mass.kind !== 'placed') return
  const at: Point = {
    opening: middle(pen.line('opening')),
    vertical: inTube(pen, 2, 0.5),
    bend: inTube(pen, 4, 0.5),
    horizontal: pen.line('meatus')[0] ?? ([0, 0] as const),
    bulla: middle(pen.line('bullaCut')),
  }[mass.place]
  const size = { small: 15, medium: 25, large: 38, 'not-recorded': 25 }[mass.size]
  const outline = smoothClosed(
    nibble([0, 0]).map(([x, y]): Point => [at[0] + (x / 14) * size, at[1] + (y / 14) * size]),
  )
  const layer: Layer =
    mass.place === 'bulla' ? 'bulla' : mass.place === 'horizontal' ? 'horizontal-canal' : 'vertical-canal'
  drawing.add(layer, 'mass', outline, { fill: 'mass', stroke: mass.size === 'not-recorded' ? 'unknown' : 'finding' })
  const state = fill(words.massPlaced, { place: words.massPlaces[mass.place], size: words.massSizes[mass.size] })
  name(pen, layer, 'mass', at, outline, { state, weight: 'finding' })
}
