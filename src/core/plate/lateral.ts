import { fill } from '../outcome/finding.ts'
import { bullaState, wallThickness } from './bulla.ts'
import type { Drawing } from './drawing.ts'
import type { LateralLine, PlateFacts } from './facts.ts'
import {
  between,
  circle,
  joined,
  moved,
  type Path,
  type Point,
  pointsOf,
  sampled,
  smooth,
  smoothClosed,
} from './geometry.ts'
import { canalIsGone, isUnknown, type Layer, operated, type PlateParameters } from './parameters.ts'
import type { FillRole, SceneLabel, StructureId } from './scene.ts'
import { band, stitches } from './transverse.ts'
import type { PlateWords } from './words.ts'

type Pen = {
  readonly drawing: Drawing
  readonly parameters: PlateParameters
  readonly wall: number
  readonly all: PlateFacts
  readonly words: PlateWords
  readonly line: (name: LateralLine) => Point[]
  readonly gone: boolean
}

/** The left ear from its own side, nose to the left, deep layers first: what the surgeon meets from the skin inwards. */
export function drawLateral(drawing: Drawing, parameters: PlateParameters, all: PlateFacts, words: PlateWords): void {
  const facts = all[parameters.species].lateral
  const pen: Pen = {
    drawing,
    parameters,
    wall: facts.wall.value,
    all,
    words,
    line: (name) => pointsOf(facts.lines[name].value),
    gone: canalIsGone(parameters),
  }
  drawSurroundings(pen)
  drawing.add('parotid', 'parotid', smoothClosed(pen.line('parotid')), { fill: 'gland' })
  drawBulla(pen)
  drawVessels(pen)
  drawMeatus(pen)
  drawNerve(pen)
  drawFlap(pen)
  drawCanal(pen)
  drawParotid(pen)
  drawOpening(pen)
  drawIncision(pen)
}

function name(
  pen: Pen,
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

function area(
  pen: Pen,
  layer: Layer,
  structure: StructureId,
  line: LateralLine,
  look: { fill?: FillRole },
  at: number,
): void {
  const points = pen.line(line)
  const path = smoothClosed(points)
  pen.drawing.add(layer, structure, path, { ...look, stroke: 'context' })
  name(pen, layer, structure, points[at], path)
}

function drawSurroundings(pen: Pen): void {
  pen.drawing.add('surroundings', 'body', smoothClosed(pen.line('jaw')), { fill: 'bone', stroke: 'context' })
  area(pen, 'surroundings', 'jaw-joint', 'jawJoint', { fill: 'bone' }, 2)
  area(pen, 'surroundings', 'atlas', 'atlas', { fill: 'bone' }, 5)
  area(pen, 'surroundings', 'digastric', 'digastric', { fill: 'muscle' }, 6)
  const nerve = pen.line('hypoglossal')
  pen.drawing.add('surroundings', 'hypoglossal-nerve', smooth(nerve), { stroke: 'nerve-behind' })
  name(pen, 'surroundings', 'hypoglossal-nerve', nerve[3], band(nerve))
}

function drawBulla(pen: Pen): void {
  const { drawing, parameters, words } = pen
  const points = sampled(pen.line('bulla'), 6, true)
  const closed = [...points, ...points.slice(0, 1)]
  const thick = wallThickness(pen.wall, parameters.bullaWall, pen.all.thickWallTimes.value)
  const inner = moved(closed, thick).slice(0, -1)
  const opened = parameters.surgery.kind === 'done' && parameters.surgery.bulla === 'opened'
  const content = opened
    ? 'paper'
    : ({ air: 'air', filled: 'filled', 'not-assessed': 'unknown' } as const)[parameters.bullaContent]
  const outline = smoothClosed(pen.line('bulla'))
  drawing.add('bulla', 'bulla', outline, { fill: 'bone', stroke: isUnknown(parameters.bullaWall) ? 'unknown' : 'bone' })
  drawing.add('bulla', 'bulla', smoothClosed(inner.filter((_, index) => index % 3 === 0)), {
    fill: content,
    stroke: 'fine',
  })
  if (parameters.bullaWall === 'eaten-away') {
    for (const share of [0.52, 0.6, 0.68]) {
      const at = points[Math.floor(share * points.length)] ?? [0, 0]
      drawing.add('bulla', 'bulla', smoothClosed(nibble(at)), { fill: 'paper', stroke: 'finding' })
    }
  }
  const spot: Point = [520, 742]
  if (content === 'unknown') drawing.question('bulla', 'bulla', [510, 700])
  if (isUnknown(parameters.bullaWall)) drawing.question('bulla', 'bulla', [612, 716], 13)
  const normal = parameters.bullaContent === 'air' && parameters.bullaWall === 'normal'
  name(pen, 'bulla', 'bulla', spot, outline, {
    state: bullaState(parameters, words),
    weight: normal ? 'anatomy' : 'finding',
  })
}

function nibble([x, y]: Point): Point[] {
  return [
    [x - 15, y - 4],
    [x - 4, y - 13],
    [x + 11, y - 9],
    [x + 14, y + 6],
    [x + 2, y + 13],
    [x - 12, y + 9],
  ]
}

function drawVessels(pen: Pen): void {
  const { drawing, line } = pen
  drawing.add('retroglenoid-vein', 'retroglenoid-vein', smooth(line('vein')), { stroke: 'vein' })
  drawing.add('retroglenoid-vein', 'retroglenoid-vein', smooth(line('jugular')), { stroke: 'vein' })
  const hole = line('veinForamen')[0] ?? [0, 0]
  drawing.add('retroglenoid-vein', 'retroglenoid-vein', circle(hole, 9), { stroke: 'bone', fill: 'paper' })
  name(pen, 'retroglenoid-vein', 'retroglenoid-vein', hole, band(line('vein')))
  for (const vessel of ['carotid', 'maxillaryArtery'] as const)
    drawing.add('carotid-branch', 'external-carotid', smooth(line(vessel)), { stroke: 'artery' })
  name(pen, 'carotid-branch', 'external-carotid', line('carotid')[1], band(line('carotid')))
  drawing.add('carotid-branch', 'temple-artery', smooth(line('templeArtery')), { stroke: 'artery' })
  name(pen, 'carotid-branch', 'temple-artery', line('templeArtery')[4], band(line('templeArtery')))
}

function drawMeatus(pen: Pen): void {
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

function drawNerve(pen: Pen): void {
  const { drawing, line } = pen
  for (const branch of ['nerve', 'nerveBuccalUpper', 'nerveBuccalLower', 'nerveCaudal'] as const) {
    drawing.add('facial-nerve', 'facial-nerve', smooth(line(branch)), { stroke: 'nerve' })
  }
  drawing.add('facial-nerve', 'nerve-to-lids', smooth(line('nerveToLids')), { stroke: 'nerve' })
  const foramen = line('foramen')[0] ?? [0, 0]
  drawing.add('facial-nerve', 'nerve-foramen', circle(foramen, 9), { stroke: 'bone', fill: 'paper' })
  name(pen, 'facial-nerve', 'nerve-foramen', foramen, circle(foramen, 14))
  name(pen, 'facial-nerve', 'facial-nerve', line('nerve')[4], band(line('nerve')))
  name(pen, 'facial-nerve', 'nerve-to-lids', line('nerveToLids')[5], band(line('nerveToLids')))
}

function drawFlap(pen: Pen): void {
  const { drawing, parameters, words, line } = pen
  const unknown = parameters.carriage === 'not-recorded'
  const points = line(
    ({ erect: 'flapErect', drop: 'flapDrop', 'not-recorded': 'flapStump' } as const)[parameters.carriage],
  )
  const path = joined(points, [points.at(-1) ?? [0, 0], points[0] ?? [0, 0]])
  drawing.add('flap', 'flap', path, { fill: 'cartilage' })
  drawing.add('flap', 'flap', smooth(points), { stroke: unknown ? 'unknown' : 'outline' })
  if (unknown) drawing.question('flap', 'flap', [506, 214])
  const top = points[Math.floor(points.length * 0.3)] ?? [0, 0]
  name(pen, 'flap', 'flap', between(top, [508, 300], 0.2), path, {
    state: parameters.carriage === 'drop' ? words.heldUp : words.carriage[parameters.carriage],
    weight: unknown ? 'finding' : 'anatomy',
  })
  const artery = line('flapArtery')
  const reach = unknown ? artery.slice(0, 6) : artery
  drawing.add('carotid-branch', 'flap-artery', smooth(reach), { stroke: 'artery-behind' })
  name(pen, 'carotid-branch', 'flap-artery', artery[3], band(reach))
}

function drawCanal(pen: Pen): void {
  const { drawing, parameters, words, line, gone } = pen
  const left = line('verticalLeft')
  const right = line('verticalRight')
  const tube = joined(left, [...right].reverse())
  if (gone) {
    drawing.add('taken-away', 'vertical-canal', tube, { stroke: 'removed' })
    name(pen, 'taken-away', 'vertical-canal', between(left[2] ?? [0, 0], right[2] ?? [0, 0], 0.3), tube, {
      state: words.removal['taken-away'],
      weight: 'surgery',
    })
    return
  }
  const mineral = parameters.mineral === 'yes' ? 'mineral' : 'cartilage'
  const edge = parameters.mineral === 'not-assessed' ? 'unknown' : 'outline'
  const grade = parameters.narrowing.vertical
  const unseen = isUnknown(grade)
  const leftIn = moved(sampled(left, 5), -15)
  const rightIn = moved(sampled(right, 5), 15)
  for (const [outer, inner] of [
    [left, leftIn],
    [right, rightIn],
  ] as const) {
    const wall = joined(sampled(outer, 5).slice(0, -7), inner.slice(0, -7).reverse())
    drawing.add('vertical-canal', 'cartilage', wall, { fill: mineral })
    drawing.add('vertical-canal', 'cartilage', smooth(outer), { stroke: edge })
    drawing.add('vertical-canal', 'cartilage', smooth(inner.slice(0, -7).filter((_, i) => i % 3 === 0)), {
      stroke: 'fine',
    })
  }
  const keep = unseen ? 1 : Math.max(Math.sqrt(1 - pen.all.areaLost.value[grade as 'none']), 0.06)
  const opening = line('opening')
  const middle: Point = [506, 342]
  const hole = opening.map((point) => between(middle, point, keep))
  drawing.add('vertical-canal', 'opening', smoothClosed(opening), { fill: 'lining', stroke: 'outline' })
  drawing.add('vertical-canal', 'opening', smoothClosed(hole), {
    fill: unseen ? 'unknown' : 'paper',
    stroke: unseen ? 'unknown' : grade === 'none' ? 'fine' : 'finding',
  })
  const squeeze = (from: readonly Point[], to: readonly Point[]) =>
    from.slice(0, -12).map((point, index) => between(between(point, to[index] ?? point, 0.5), point, keep * 0.94))
  for (const wall of [squeeze(leftIn, rightIn), squeeze(rightIn, leftIn)]) {
    drawing.add('vertical-canal', 'vertical-canal', smooth(wall.slice(6).filter((_, i) => i % 3 === 0)), {
      stroke: unseen ? 'unknown' : 'faint',
    })
  }
  if (unseen) drawing.question('vertical-canal', 'vertical-canal', [496, 470])
  for (const part of ['tragus', 'antitragus'] as const) {
    const path = smoothClosed(line(part))
    drawing.add('vertical-canal', part, path, { fill: mineral, stroke: 'outline' })
    name(pen, 'vertical-canal', part, line(part)[part === 'tragus' ? 0 : 3], path)
  }
  const weight = grade === 'none' ? 'anatomy' : 'finding'
  name(pen, 'vertical-canal', 'vertical-canal', between(left[2] ?? [0, 0], right[2] ?? [0, 0], 0.3), tube, {
    state: words.narrowing[grade],
    weight,
  })
  name(pen, 'vertical-canal', 'cartilage', between(right[3] ?? [0, 0], leftIn[0] ?? [0, 0], 0.06), null, {
    state: words.mineral[parameters.mineral],
    weight: parameters.mineral === 'no' ? 'anatomy' : 'finding',
  })
  const horizontal = parameters.narrowing.horizontal
  name(pen, 'horizontal-canal', 'horizontal-canal', [478, 548], null, {
    state: words.narrowing[horizontal],
    weight: horizontal === 'none' ? 'anatomy' : 'finding',
  })
  drawMass(pen)
}

function drawMass(pen: Pen): void {
  const { parameters, words, drawing } = pen
  const { mass } = parameters
  if (mass.kind !== 'placed') return
  const at: Point = (
    { opening: [480, 340], vertical: [486, 450], bend: [484, 566], horizontal: [478, 585], bulla: [540, 706] } as const
  )[mass.place]
  const size = { small: 13, medium: 20, large: 30, 'not-recorded': 20 }[mass.size]
  const outline = smoothClosed(
    nibble([0, 0]).map(([x, y]): Point => [at[0] + (x / 14) * size, at[1] + (y / 14) * size]),
  )
  const layer: Layer =
    mass.place === 'bulla' ? 'bulla' : mass.place === 'horizontal' ? 'horizontal-canal' : 'vertical-canal'
  drawing.add(layer, 'mass', outline, { fill: 'mass', stroke: mass.size === 'not-recorded' ? 'unknown' : 'finding' })
  const state = fill(words.massPlaced, { place: words.massPlaces[mass.place], size: words.massSizes[mass.size] })
  name(pen, layer, 'mass', at, outline, { state, weight: 'finding' })
}

function drawParotid(pen: Pen): void {
  const points = pen.line('parotid')
  const path = smoothClosed(points)
  pen.drawing.add('parotid', 'parotid', path, { stroke: 'context' })
  name(pen, 'parotid', 'parotid', between(points[7] ?? [0, 0], [520, 700], 0.2), path)
}

function drawOpening(pen: Pen): void {
  const { drawing, parameters, words, line } = pen
  const surgery = operated(parameters.surgery)
  if (surgery?.bulla !== 'opened') return
  const opening = smoothClosed(line('bullaCut'))
  drawing.add(
    'opened-bulla',
    'bulla-opening',
    opening,
    surgery.kind === 'planned' ? { fill: 'opened', stroke: 'cut' } : { stroke: 'removed' },
  )
  name(pen, 'opened-bulla', 'bulla-opening', line('bullaCut')[5], opening, {
    state: words.surgery[surgery.kind],
    weight: 'surgery',
  })
  if (surgery.kind === 'done') return
  const wedge = smoothClosed(line('leaveAlone'))
  drawing.add('opened-bulla', 'leave-alone', wedge, { fill: 'leave-alone', stroke: 'faint' })
  name(pen, 'opened-bulla', 'leave-alone', line('leaveAlone')[1], wedge, { weight: 'surgery' })
}

function drawIncision(pen: Pen): void {
  const { drawing, parameters, words, line } = pen
  const surgery = operated(parameters.surgery)
  if (!surgery || surgery.incision === 'not-recorded') return
  const state = words.incision[surgery.incision]
  const lines = surgery.incision === 'T-shaped' ? [line('cutBar'), line('cutStem')] : [line('cutCircle')]
  const structure = surgery.kind === 'planned' ? 'incision' : 'scar'
  if (surgery.kind === 'done') {
    const closed = surgery.incision === 'T-shaped' ? lines : [line('scarCircle')]
    for (const scar of closed) {
      drawing.add('incision', 'scar', smooth(scar), { stroke: 'scar' })
      drawing.add('incision', 'scar', stitches(scar), { stroke: 'scar' })
    }
  } else if (surgery.incision === 'T-shaped')
    for (const cut of lines) drawing.add('incision', 'incision', smooth(cut), { stroke: 'cut' })
  else drawing.add('incision', 'incision', smoothClosed(line('cutCircle')), { stroke: 'cut' })
  const named = lines.at(-1) ?? []
  name(
    pen,
    'incision',
    structure,
    surgery.incision === 'T-shaped' ? named[2] : surgery.kind === 'done' ? line('scarCircle')[0] : named[6],
    band(named),
    { state, weight: 'surgery' },
  )
}
