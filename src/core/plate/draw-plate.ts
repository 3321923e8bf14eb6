import type { Species } from '../animal/species.ts'
import { fill } from '../outcome/finding.ts'
import { Drawing } from './drawing.ts'
import type { PlateFacts } from './facts.ts'
import { mirrorPath, mirrorPoint, movedToMirror } from './geometry.ts'
import { drawLateral } from './lateral.ts'
import { canalIsGone, isUnknown, operated, type PlateParameters, plateVersion } from './parameters.ts'
import type { Box, Scene, Shape } from './scene.ts'
import { drawTransverse } from './transverse.ts'
import type { KeySample, PlateWords } from './words.ts'

/** All frames are symmetrical about x = 500, so that the other side fits the same frame. */
const frames: Readonly<Record<PlateParameters['view'], Readonly<Record<Species, Box>>>> = {
  transverse: {
    dog: { x: 30, y: 0, width: 940, height: 900 },
    cat: { x: 30, y: 0, width: 940, height: 900 },
  },
  lateral: {
    dog: { x: 136, y: 10, width: 728, height: 930 },
    cat: { x: 136, y: 120, width: 728, height: 820 },
  },
}

/**
 * The ear as these parameters say it is, as a scene without a sheet. The transverse drawing is made for the RIGHT ear
 * seen from the front, the lateral one for the LEFT ear with the nose to the left; the other side is the mirror image,
 * words excepted.
 *
 * @example drawPlate(parameters, plateFacts, plateInEnglish).labels.find((label) => label.structure === 'drum')
 * Reference: orientation as on a transverse CT slice, the right side of the animal on the viewer's left.
 */
export function drawPlate(parameters: PlateParameters, facts: PlateFacts, words: PlateWords): Scene {
  const drawing = new Drawing(parameters.layers)
  const transverse = parameters.view === 'transverse'
  if (transverse) drawTransverse(drawing, parameters, facts, words)
  else drawLateral(drawing, parameters, facts, words)
  const mirrored = parameters.side !== (transverse ? 'RIGHT' : 'LEFT')
  const near = transverse ? words.towards.outside : words.towards.nose
  const far = transverse ? words.towards.midline : words.towards.tail
  const units = facts[parameters.species].transverse.unitsPerMillimetre.value
  return {
    plate: plateVersion,
    species: parameters.species,
    side: parameters.side,
    view: parameters.view,
    parameters,
    frame: frames[parameters.view][parameters.species],
    shapes: mirrored ? drawing.shapes.map(mirrorShape) : drawing.shapes,
    labels: mirrored ? drawing.labels.map((label) => ({ ...label, at: mirrorPoint(label.at) })) : drawing.labels,
    hits: mirrored ? drawing.hits.map((hit) => ({ ...hit, path: mirrorPath(hit.path) })) : drawing.hits,
    title: fill(words.title, { side: words.sides[parameters.side] }),
    subtitle: fill(words.subtitle, {
      species: words.species[parameters.species],
      view: words.views[parameters.view],
    }),
    leftward: mirrored ? far : near,
    rightward: mirrored ? near : far,
    key: keyOf(drawing, words),
    notes: notesOf(parameters, words),
    scale: transverse ? { length: units * 10, text: words.scale[parameters.species] } : null,
  }
}

/** The same shape on the other side; a sign stays readable. */
export function mirrorShape(shape: Shape): Shape {
  const { upright, path } = shape
  if (!upright) return { ...shape, path: mirrorPath(path) }
  return { ...shape, path: movedToMirror(path, upright), upright: mirrorPoint(upright) }
}

const keySamples: readonly KeySample[] = [
  'nerve-behind',
  'unknown',
  'filled',
  'mineral',
  'mass',
  'planned',
  'removed',
  'opened',
  'leave-alone',
]

/** Only what is on the drawing is explained under it. */
function keyOf(drawing: Drawing, words: PlateWords): Scene['key'] {
  const used = new Set(drawing.shapes.flatMap(({ stroke, fill: filled }) => [stroke, filled]))
  if (used.has('artery-behind')) used.add('nerve-behind')
  return keySamples.filter((sample) => used.has(sample)).map((sample) => ({ sample, text: words.key[sample] }))
}

/** What the drawing cannot show by itself, in words under it; the description says the same sentences. */
export function notesOf(parameters: PlateParameters, words: PlateWords): string[] {
  const { notes } = words
  const { narrowing, mass, surgery, mineral } = parameters
  const operation = operated(surgery)
  const gone = canalIsGone(parameters)
  return [
    ...(mass.kind === 'not-assessed' ? [notes.massNotAssessed] : []),
    ...(mass.kind === 'place-not-recorded' ? [notes.massPlaceNotRecorded] : []),
    ...(!gone && narrowing.recorded === 'whole' && !isUnknown(narrowing.vertical) ? [notes.wholeCanal] : []),
    ...(!gone && mineral === 'yes' ? [notes.mineralNotProof] : []),
    ...(surgery.kind === 'not-drawn' ? [notes.operationNotDrawn] : []),
    ...(operation?.incision === 'not-recorded' ? [notes.incisionNotRecorded] : []),
    ...(operation?.canal === 'not-recorded' ? [notes.removalNotRecorded] : []),
    ...(operation?.bulla === 'not-recorded' ? [notes.openingNotRecorded] : []),
    parameters.view === 'transverse' ? notes.transverse : notes.lateral,
    notes.flap,
  ]
}
