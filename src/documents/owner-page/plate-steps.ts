import { type PlateStep, plateSteps } from '#content/owner-page/plate-steps.ts'
import { plateFacts } from '#content/plate/plate-facts.ts'
import type { Side } from '#core/animal/species.ts'
import type { Case } from '#core/journal/fold.ts'
import { describePlate } from '#core/plate/describe.ts'
import { drawPlate } from '#core/plate/draw-plate.ts'
import type { Hand } from '#core/plate/hand.ts'
import { liftedOut } from '#core/plate/lift.ts'
import type { PlateParameters } from '#core/plate/parameters.ts'
import { plateParametersOf } from '#core/plate/parameters-of.ts'
import type { Scene } from '#core/plate/scene.ts'
import { sceneToSvg } from '#core/plate/svg.ts'
import type { OwnerPageWords } from './words.ts'

/** One drawing, laid out for a phone and for a wider sheet, with the sentence that says the same. */
export type Picture = { readonly narrow: string; readonly wide: string; readonly alt: string }

/** Seldom wider than a phone is, less its margins; and a tablet or a printed page. */
const widths = { narrow: 288, wide: 640 } as const

export function pictureOf(scene: Scene, words: OwnerPageWords, hand?: Hand): Picture {
  const alt = describePlate(scene, words.plate, hand)
  const drawn = (width: number) =>
    sceneToSvg(scene, { width, theme: 'light', description: alt, ...(hand && { hand }) }).trim()
  return { narrow: drawn(widths.narrow), wide: drawn(widths.wide), alt }
}

/**
 * The still pictures of one ear that explain what is inside and what an operation takes: the plate of this animal, with
 * what is talked about lifted out. A step whose picture the record cannot carry has none.
 */
export function plateStep(theCase: Case, side: Side, step: PlateStep, words: OwnerPageWords): Picture | null {
  const found = plateParametersOf(theCase, side, { view: step.view, show: 'as-found', operation: null })
  if (found.kind === 'refusal') return null
  const scene = drawPlate({ ...found.answer, surgery: surgeryOf(step) }, plateFacts, words.plate)
  return pictureOf(step.lifted ? liftedOut(scene, step.lifted) : { ...scene, notes: [] }, words)
}

/** What the operation that takes out the canal would do; its cut is the surgeon's to choose and is not drawn. */
function surgeryOf({ show }: PlateStep): PlateParameters['surgery'] {
  if (show === 'today') return { kind: 'none' }
  const kind = show === 'planned' ? 'planned' : 'done'
  return { kind, incision: 'not-recorded', canal: 'taken-away', bulla: 'opened' }
}

export { plateSteps }
