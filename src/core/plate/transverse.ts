import { bullaOnTransverse } from './bulla.ts'
import { canalOf, centreAt, stretch, walls } from './canal.ts'
import type { Drawing } from './drawing.ts'
import type { PlateFacts, TransverseLine } from './facts.ts'
import { between, circle, joined, type Point, pointsOf, smooth, smoothClosed, straight } from './geometry.ts'
import { canalIsGone, type PlateParameters } from './parameters.ts'
import { at, band, label, middle, type Pen } from './pen.ts'
import { fibres, lobules, windings } from './texture.ts'
import { drawCanal, tube } from './transverse-canal.ts'
import { drawDrum, drawMass } from './transverse-drum.ts'
import type { PlateWords } from './words.ts'

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
  drawing.add('surroundings', 'temporal-muscle', fibres(line('temporalMuscle'), [0.22, 1], 15), { stroke: 'texture' })
  drawing.name('surroundings', 'temporal-muscle', middle(line('temporalMuscle')), label(pen, 'temporal-muscle'), muscle)
  const digastric = smoothClosed(line('digastric'))
  drawing.add('surroundings', 'digastric', digastric, { fill: 'muscle', stroke: 'faint' })
  drawing.name('surroundings', 'digastric', middle(line('digastric')), label(pen, 'digastric'), digastric)
  const gland = smoothClosed(line('parotid'))
  drawing.add('parotid', 'parotid', gland, { fill: 'gland', stroke: 'faint' })
  drawing.add('parotid', 'parotid', lobules(line('parotid'), 27), { stroke: 'texture' })
  drawing.name('parotid', 'parotid', at(line('parotid'), 0.52, 26), label(pen, 'parotid'), gland)
  const brain = smoothClosed(line('brain'))
  drawing.add('surroundings', 'brain', brain, { fill: 'brain' })
  drawing.add('surroundings', 'brain', windings(line('brain'), -1), { stroke: 'texture' })
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

function drawFlap(pen: Pen): void {
  const { drawing, line, parameters, words } = pen
  const name = { erect: 'flapErect', drop: 'flapDrop', 'not-recorded': 'flapStump' }[parameters.carriage]
  const [outer, inner] = tapered(line(`${name}Outer` as TransverseLine), line(`${name}Inner` as TransverseLine))
  const unknown = parameters.carriage === 'not-recorded'
  const path = joined(outer, [...inner].reverse())
  const edge = { stroke: unknown ? 'unknown' : 'outline' } as const
  const core = (share: number) => outer.map((point, index) => between(point, inner[index] ?? point, share))
  drawing.add('flap', 'flap', path, { fill: 'lining' })
  drawing.add('flap', 'flap', joined(core(0.27), core(0.73).reverse()), { fill: 'cartilage', stroke: 'faint' })
  drawing.add('flap', 'flap', smooth(outer), edge)
  drawing.add('flap', 'flap', smooth(inner), edge)
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

/** The flap gets thinner towards its edge; at its base it is as thick as the wall of the canal that it goes on from. */
function tapered(outer: readonly Point[], inner: readonly Point[]): readonly [Point[], Point[]] {
  const pull = (points: readonly Point[], others: readonly Point[]) =>
    points.map((point, index) => {
      const share = index / Math.max(points.length - 1, 1)
      const thick = 1 - 0.45 * Math.max(0, (share - 0.2) / 0.8)
      return between(between(point, others[index] ?? point, 0.5), point, thick)
    })
  return [pull(outer, inner), pull(inner, outer)]
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
