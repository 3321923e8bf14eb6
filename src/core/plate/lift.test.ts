import { expect, test } from 'vitest'
import { plateFacts } from '#content/plate/plate-facts.ts'
import { plateInEnglish } from '#content/wording/plate.ts'
import { speciesList } from '#core/animal/species.ts'
import { drawPlate } from './draw-plate.ts'
import { liftedOut } from './lift.ts'
import { layers, type PlateParameters, views } from './parameters.ts'

const ill: PlateParameters = {
  species: 'dog',
  side: 'LEFT',
  view: 'lateral',
  carriage: 'drop',
  narrowing: { vertical: 'closed', horizontal: 'closed', recorded: 'whole' },
  mineral: 'yes',
  drum: 'could-not-see',
  bullaContent: 'filled',
  bullaWall: 'thick',
  mass: { kind: 'none' },
  surgery: { kind: 'none' },
  layers,
}
const every = speciesList.flatMap((species) => views.map((view) => ({ ...ill, species, view })))
const parts = ['facial-nerve', 'retroglenoid-vein'] as const

test.each(every)(
  'lifts the nerve and the vein out of a $species seen $view: lines, words and areas of nothing else',
  (of) => {
    const scene = drawPlate(of, plateFacts, plateInEnglish)
    const lifted = liftedOut(scene, parts)
    expect(new Set(lifted.labels.map(({ structure }) => structure))).toEqual(new Set(parts))
    expect(lifted.hits.every(({ structure }) => parts.some((part) => part === structure))).toBe(true)
    const own = (shapes: typeof scene.shapes) =>
      shapes.filter(({ structure }) => parts.some((part) => part === structure))
    expect(own(lifted.shapes)).toEqual(own(scene.shapes))
    expect(own(lifted.shapes).length).toBeGreaterThan(1)
    const others = lifted.shapes.filter((shape) => !own(lifted.shapes).includes(shape))
    expect(new Set(others.map(({ stroke }) => stroke))).toEqual(new Set([null, 'faint']))
  },
)

test('moves no line: every line that is still there lies where it lay', () => {
  const scene = drawPlate(ill, plateFacts, plateInEnglish)
  const paths = new Set(scene.shapes.map(({ path }) => JSON.stringify(path)))
  expect(liftedOut(scene, parts).shapes.every(({ path }) => paths.has(JSON.stringify(path)))).toBe(true)
  expect(liftedOut(scene, parts).frame).toEqual(scene.frame)
})

test('explains under the drawing only what is lifted: no hatch of a filled bulla beside a nerve', () => {
  const scene = drawPlate(ill, plateFacts, plateInEnglish)
  expect(scene.key.map(({ sample }) => sample)).toContain('filled')
  expect(liftedOut(scene, ['retroglenoid-vein']).key).toEqual([])
})
