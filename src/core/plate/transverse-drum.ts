import { fill } from '../outcome/finding.ts'
import { between, type Point, sampled, smooth, smoothClosed, straight } from './geometry.ts'
import { isUnknown } from './parameters.ts'
import { band, label, type Pen } from './pen.ts'

export function drawDrum(pen: Pen): void {
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

export function drawMass(pen: Pen): void {
  const { drawing, parameters, words, canal, facts, line, gone } = pen
  const { mass } = parameters
  if (mass.kind !== 'placed') return
  if (gone && mass.place !== 'bulla') return
  const { bend } = facts.parts.value
  const share = { opening: 0.06, vertical: bend * 0.6, bend, horizontal: bend + (1 - bend) * 0.45 }
  const size = { small: 16, medium: 27, large: 40, 'not-recorded': 27 }[mass.size]
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
