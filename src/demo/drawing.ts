import type { BodyOf } from '#core/journal/fold.ts'
import type { Point } from '#core/plate/geometry.ts'
import { layers, plateVersion } from '#core/plate/parameters.ts'
import { strokeFrom } from '#core/plate/stroke.ts'

/** Round the filled bulla of the left ear, not quite closed, as a hand draws it. */
const roundTheBulla: readonly Point[] = [
  [322, 588],
  [306, 566],
  [280, 552],
  [248, 549],
  [214, 556],
  [186, 574],
  [168, 602],
  [162, 636],
  [170, 672],
  [190, 703],
  [220, 724],
  [254, 731],
  [288, 724],
  [318, 704],
  [338, 674],
  [345, 640],
  [341, 606],
  [326, 580],
  [310, 566],
]
/** Under the horizontal canal, along the nerve. */
const alongTheNerve: readonly Point[] = [
  [386, 548],
  [396, 574],
  [414, 592],
  [440, 600],
  [474, 601],
  [508, 600],
  [542, 601],
  [576, 603],
  [606, 608],
  [640, 618],
]
/** Over the two canals: this comes out. */
const whatComesOut: readonly Point[] = [
  [806, 232],
  [796, 268],
  [786, 312],
  [776, 356],
  [766, 398],
  [754, 440],
  [736, 474],
  [704, 494],
  [660, 500],
  [612, 501],
  [560, 501],
  [508, 501],
  [456, 500],
  [424, 499],
]

/** What was drawn on the plate of the left ear while its operation was explained to the owner. */
export const tansysDrawing: BodyOf<'plate-drawing'> = {
  plate: plateVersion,
  parameters: {
    species: 'dog',
    side: 'LEFT',
    view: 'transverse',
    carriage: 'drop',
    narrowing: { vertical: 'closed', horizontal: 'closed', recorded: 'whole' },
    mineral: 'yes',
    drum: 'could-not-see',
    bullaContent: 'filled',
    bullaWall: 'thick',
    mass: { kind: 'none' },
    surgery: { kind: 'none' },
    layers: layers.filter((layer) => layer !== 'carotid-branch'),
  },
  strokes: [drawn(whatComesOut, 'marker'), drawn(roundTheBulla, 'pen'), drawn(alongTheNerve, 'pen')],
  marks: [{ structure: 'nerve-to-lids', sign: 'arrow' }],
  title: 'What is closed, what is full, and where the nerve of the face runs',
  drawnFor: 'owner',
  watchedBy: ['contact-okafor'],
}

function drawn(points: readonly Point[], tool: 'pen' | 'marker') {
  const stroke = strokeFrom(points, tool)
  return { ...stroke, points: [...stroke.points] }
}
