import { bullaState, wallThickness } from './bulla.ts'
import type { Drawing } from './drawing.ts'
import type { LateralLine, PlateFacts } from './facts.ts'
import { between, circle, joined, moved, type Point, pointsOf, sampled, smooth, smoothClosed } from './geometry.ts'
import { drawCanal, drawMeatus } from './lateral-canal.ts'
import { type LateralPen, name, nibble } from './lateral-pen.ts'
import { canalIsGone, isUnknown, type Layer, operated, type PlateParameters } from './parameters.ts'
import { band, middle, stitches } from './pen.ts'
import type { FillRole, StructureId } from './scene.ts'
import { fibres, lobules } from './texture.ts'
import type { PlateWords } from './words.ts'

/** The left ear from its own side, nose to the left, deep layers first: what the surgeon meets from the skin inwards. */
export function drawLateral(drawing: Drawing, parameters: PlateParameters, all: PlateFacts, words: PlateWords): void {
  const facts = all[parameters.species].lateral
  const pen: LateralPen = {
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
  drawing.add('parotid', 'parotid', lobules(pen.line('parotid'), 25), { stroke: 'texture' })
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

function area(
  pen: LateralPen,
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

function drawSurroundings(pen: LateralPen): void {
  pen.drawing.add('surroundings', 'body', smoothClosed(pen.line('jaw')), { fill: 'bone', stroke: 'context' })
  area(pen, 'surroundings', 'jaw-joint', 'jawJoint', { fill: 'bone' }, 2)
  area(pen, 'surroundings', 'atlas', 'atlas', { fill: 'bone' }, 5)
  area(pen, 'surroundings', 'digastric', 'digastric', { fill: 'muscle' }, 6)
  pen.drawing.add('surroundings', 'digastric', fibres(pen.line('digastric'), [-0.93, 0.37], 12), { stroke: 'texture' })
  const nerve = pen.line('hypoglossal')
  pen.drawing.add('surroundings', 'hypoglossal-nerve', smooth(nerve), { stroke: 'nerve-behind' })
  name(pen, 'surroundings', 'hypoglossal-nerve', nerve[3], band(nerve))
}

function drawBulla(pen: LateralPen): void {
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

function drawVessels(pen: LateralPen): void {
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

function drawNerve(pen: LateralPen): void {
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

function drawFlap(pen: LateralPen): void {
  const { drawing, parameters, words, line } = pen
  const unknown = parameters.carriage === 'not-recorded'
  const points = line(
    ({ erect: 'flapErect', drop: 'flapDrop', 'not-recorded': 'flapStump' } as const)[parameters.carriage],
  )
  const path = joined(points, [points.at(-1) ?? [0, 0], points[0] ?? [0, 0]])
  drawing.add('flap', 'flap', path, { fill: 'lining' })
  if (!unknown) drawRim(pen, points)
  drawing.add('flap', 'flap', smooth(points), { stroke: unknown ? 'unknown' : 'outline' })
  if (unknown) drawing.question('flap', 'flap', [middle(points)[0], Math.min(...points.map(([, y]) => y)) - 36])
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

/** The inner side of the flap: its rolled rim, the folds of the scapha, and the small pouch on its edge towards the tail. */
function drawRim({ drawing }: LateralPen, points: readonly Point[]): void {
  const edge = sampled(points, 8)
  const at = (share: number, inwards: number) =>
    moved(edge, inwards)[Math.round(share * (edge.length - 1))] ?? ([0, 0] as const)
  const rim = [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9].map((share) => at(share, 13))
  drawing.add('flap', 'flap', smooth(rim), { stroke: 'faint' })
  drawing.add('flap', 'flap', smooth([at(0.76, 0), at(0.79, 24), at(0.84, 26), at(0.89, 0)]), { stroke: 'fine' })
  const [low, top] = [between(at(0.02, 0), at(0.98, 0), 0.5), at(0.5, 13)]
  for (const aside of [-26, 4, 34]) {
    const fold = [0.34, 0.52, 0.7, 0.84].map((share, index): Point => {
      const [x, y] = between(low, top, share - Math.abs(aside) / 500)
      return [x + aside * (0.7 + 0.18 * index), y]
    })
    drawing.add('flap', 'flap', smooth(fold), { stroke: 'texture' })
  }
}

function drawParotid(pen: LateralPen): void {
  const points = pen.line('parotid')
  const path = smoothClosed(points)
  pen.drawing.add('parotid', 'parotid', path, { stroke: 'context' })
  name(pen, 'parotid', 'parotid', between(points[7] ?? [0, 0], [520, 700], 0.2), path)
}

function drawOpening(pen: LateralPen): void {
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

function drawIncision(pen: LateralPen): void {
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
