import { fill } from '../outcome/finding.ts'
import { notesOf } from './draw-plate.ts'
import { layers, type PlateParameters } from './parameters.ts'
import type { Scene } from './scene.ts'
import type { PlateWords } from './words.ts'

/**
 * Everything the plate shows, as text for somebody who cannot see it: which ear, how the parts lie, what is known of
 * each, what is not known, what the operation takes.
 *
 * @example describePlate(scene, plateInEnglish)
 */
export function describePlate(scene: Scene, words: PlateWords): string {
  const { described } = words
  const parameters: PlateParameters = scene.parameters
  const place = {
    side: words.sides[scene.side],
    species: words.species[scene.species].toLowerCase(),
    view: words.views[scene.view],
  }
  const said = scene.labels.map(({ text, state }) => (state === null ? text : `${text}: ${state}`))
  const off = layers.filter((layer) => !parameters.layers.includes(layer)).map((layer) => described.layers[layer])
  return [
    fill(described.opening, place),
    described.relations[scene.view][scene.species],
    fill(described.named, { list: said.join('; ') }),
    ...(off.length > 0 ? [fill(described.notDrawn, { list: off.join(', ') })] : []),
    ...notesOf(parameters, words),
  ].join(' ')
}
