import type { OwnerWords } from '#content/languages/owner-words.ts'
import { plateFacts } from '#content/plate/plate-facts.ts'
import { keptDrawingInEnglish, plateInEnglish } from '#content/wording/plate.ts'
import type { Side } from '#core/animal/species.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf, Case } from '#core/journal/fold.ts'
import { describePlate } from '#core/plate/describe.ts'
import { drawPlate } from '#core/plate/draw-plate.ts'
import { drawingsOf, sayDrawing } from '#core/plate/drawings-of.ts'
import { type PlateWish, plateParametersOf } from '#core/plate/parameters-of.ts'
import { sceneToSvg } from '#core/plate/svg.ts'
import { type Block, paragraph } from '../render/model.ts'

/** The words on a drawing and beside it. */
type PictureWords = Pick<OwnerWords, 'plate' | 'drawing'>
const english: PictureWords = { plate: plateInEnglish, drawing: keptDrawingInEnglish }

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
  const scene = drawPlate(parameters.answer, plateFacts, plateInEnglish)
  const alt = describePlate(scene, plateInEnglish)
  const svg = sceneToSvg(scene, { ...onA4, theme: 'print', description: alt })
  return [{ kind: 'picture', svg, alt, caption }]
}

/**
 * What was drawn on the plate of one ear, each from the parameters that were kept with it and exactly as it was drawn.
 * A doubt stands as a sentence under its picture.
 *
 * @example drawingPictures(file, 'LEFT', ({ drawnFor }) => drawnFor === 'owner')
 */
export function drawingPictures(
  file: CaseFile,
  side: Side,
  wanted: (body: BodyOf<'plate-drawing'>, at: string) => boolean = () => true,
  { plate, drawing: beside }: PictureWords = english,
): Block[] {
  const nameOf = (id: string) => file.people.get(id)?.name ?? file.contacts.get(id)?.name ?? `‹${id}›`
  return drawingsOf(file.theCase, side)
    .filter(({ line }) => wanted(line.body, line.at))
    .flatMap((drawing): Block[] => {
      const { parameters, strokes, marks } = drawing.line.body
      const scene = drawPlate(parameters, plateFacts, plate)
      const hand = { strokes, marks }
      const alt = describePlate(scene, plate, hand)
      const svg = sceneToSvg(scene, { ...onA4, theme: 'print', description: alt, hand })
      const said = sayDrawing(drawing, beside, nameOf)
      return [{ kind: 'picture', svg, alt, caption: said.caption }, ...said.doubts.map((doubt) => paragraph(doubt))]
    })
}
