import { fill } from '../outcome/finding.ts'
import { notesOf } from './draw-plate.ts'
import { canalIsGone, layers, type PlateParameters } from './parameters.ts'
import type { Scene, SceneLabel } from './scene.ts'
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
  const said = (weight: SceneLabel['weight']) =>
    scene.labels
      .filter((label) => label.weight === weight)
      .map(({ text, state }) => (state === null ? text : `${text}: ${state}`))
      .join('; ')
  const { found, surgery, named } = described
  const lists = (
    [
      ['finding', found],
      ['surgery', surgery],
      ['anatomy', named],
    ] as const
  ).flatMap(([weight, template]) => {
    const list = said(weight)
    return list === '' ? [] : [fill(template, { list })]
  })
  const off = layers.filter((layer) => !parameters.layers.includes(layer)).map((layer) => described.layers[layer])
  return [
    fill(described.opening, place),
    canalIsGone(parameters) ? described.afterwards : described.relations[scene.view][scene.species],
    ...lists,
    ...(off.length > 0 ? [fill(described.notDrawn, { list: off.join(', ') })] : []),
    ...notesOf(parameters, words),
  ].join(' ')
}
