import { expect, it } from 'vitest'
import { plateFacts } from '#content/plate/plate-facts.ts'
import { plateInEnglish } from '#content/wording/plate.ts'
import { speciesList } from '../animal/species.ts'
import { canonical, hashText, type Json } from '../journal/canonical.ts'
import { drawPlate } from './draw-plate.ts'
import { type PlateParameters, plateVersion, views } from './parameters.ts'
import { unknownEar, wellEar } from './plates-for-tests.ts'

const ill: PlateParameters = {
  ...wellEar,
  side: 'LEFT',
  carriage: 'drop',
  narrowing: { vertical: 'severe', horizontal: 'closed', recorded: 'by-part' },
  mineral: 'yes',
  drum: 'ruptured',
  bullaContent: 'filled',
  bullaWall: 'thick',
  mass: { kind: 'placed', place: 'vertical', size: 'medium' },
}
const ears: readonly PlateParameters[] = [
  wellEar,
  unknownEar,
  ill,
  { ...ill, surgery: { kind: 'planned', incision: 'T-shaped', canal: 'taken-away', bulla: 'opened' } },
  { ...ill, surgery: { kind: 'done', incision: 'circular', canal: 'taken-away', bulla: 'opened' } },
]

/** The lines of many ears, in tenths, so that only a line that really moved counts. */
function linesOf(): string {
  const drawn = ears.flatMap((ear) =>
    speciesList.flatMap((species) =>
      views.map((view) => {
        const { shapes, frame } = drawPlate({ ...ear, species, view }, plateFacts, plateInEnglish)
        const path = shapes.map((shape) =>
          shape.path.flat().map((part) => (typeof part === 'number' ? Math.round(part * 10) : part)),
        )
        return { frame, path }
      }),
    ),
  )
  return hashText(canonical(drawn as unknown as Json))
}

it('The plate keeps its number as long as it keeps its lines: what somebody drew on it must lie where it lay', () => {
  // A line that moves is another plate: raise plateVersion and write the new fingerprint here, both in one change.
  expect({ plate: plateVersion, lines: linesOf() }).toEqual({
    plate: 3,
    lines: 'bc0eb6a44e04dba4b9f569160cd303c16a3e4204b0809a7360402111f495c252',
  })
})
