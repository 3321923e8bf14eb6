import { plateFacts } from '#content/plate/plate-facts.ts'
import { plateInEnglish as words } from '#content/wording/plate.ts'
import type { Side } from '#core/animal/species.ts'
import type { Case } from '#core/journal/fold.ts'
import { describePlate } from '#core/plate/describe.ts'
import { drawPlate } from '#core/plate/draw-plate.ts'
import { type PlateWish, plateParametersOf } from '#core/plate/parameters-of.ts'
import { sceneToSvg } from '#core/plate/svg.ts'
import type { Block } from '../render/model.ts'

/** Less than the printed column of an A4 page, in pixels of 1/96 inch; words of 8 pt. */
const onA4 = { width: 540, pixelLabels: 11 } as const

/**
 * The plate of one ear as a block of a paper, with its description; no block when the record cannot carry one.
 *
 * @example platePicture(theCase, 'LEFT', { view: 'transverse', show: 'as-left', operation }, 'The LEFT ear as left')
 */
export function platePicture(theCase: Case, side: Side, wish: PlateWish, caption: string): Block[] {
  const parameters = plateParametersOf(theCase, side, wish)
  if (parameters.kind === 'refusal') return []
  const scene = drawPlate(parameters.answer, plateFacts, words)
  const alt = describePlate(scene, words)
  const svg = sceneToSvg(scene, { ...onA4, theme: 'print', description: alt })
  return [{ kind: 'picture', svg, alt, caption }]
}
