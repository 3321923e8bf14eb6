import { fill } from '../outcome/finding.ts'
import { notesOf } from './draw-plate.ts'
import { emptyHand, type Hand } from './hand.ts'
import { canalIsGone, layers, type PlateParameters } from './parameters.ts'
import type { Scene, SceneLabel } from './scene.ts'
import type { PlateWords } from './words.ts'

/**
 * Everything the plate shows, as sentences for somebody who cannot see it: which ear, how the parts lie, what is known of
 * each, what is not known, what the operation takes.
 *
 * @example sentencesOf(scene, plateInEnglish)[0] // 'Line drawing of the LEFT ear of a dog, …'
 */
export function sentencesOf(scene: Scene, words: PlateWords): string[] {
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
  ]
}

/** The same as one text, for the description of a picture. */
export function describePlate(scene: Scene, words: PlateWords, hand: Hand = emptyHand): string {
  return [...sentencesOf(scene, words), ...handSentences(hand, words)].join(' ')
}

/** What a person drew, as far as words can say it: how many lines, and which parts were marked. */
export function handSentences({ strokes, marks }: Hand, words: PlateWords): string[] {
  const { hand } = words
  const lines = strokes.length === 1 ? hand.line : fill(hand.lines, { count: String(strokes.length) })
  const parts = [...new Set(marks.map(({ structure }) => words.structures[structure]))].join(', ')
  return [...(strokes.length > 0 ? [lines] : []), ...(parts === '' ? [] : [fill(hand.marked, { list: parts })])]
}
