import { describe, expect, it } from 'vitest'
import { plateFacts } from '#content/plate/plate-facts.ts'
import { plateInEnglish } from '#content/wording/plate.ts'
import { sides, speciesList } from '../animal/species.ts'
import { drawPlate } from './draw-plate.ts'
import { views } from './parameters.ts'
import { unknownEar, wellEar } from './plates-for-tests.ts'
import { structures } from './scene.ts'
import { sheetOf, toScene, toSheet } from './sheet.ts'
import { touchTargets } from './touch.ts'

const sheets = speciesList.flatMap((species) =>
  sides.flatMap((side) =>
    views.flatMap((view) =>
      [280, 320, 768, 860].map((width) =>
        sheetOf(drawPlate({ ...unknownEar, species, side, view }, plateFacts, plateInEnglish), {
          width,
          theme: 'light',
        }),
      ),
    ),
  ),
)

describe('the parts that can be touched', () => {
  it('are all that are named on the plate, each once, in anatomical order', () => {
    for (const sheet of sheets) {
      const touched = touchTargets(sheet).map(({ structure }) => structure)
      expect(new Set(touched)).toEqual(new Set(sheet.scene.labels.map(({ structure }) => structure)))
      expect(touched).toEqual(structures.filter((structure) => touched.includes(structure)))
    }
  })

  it('are at least 24 pixels wide and high, at their point and at their word (WCAG 2.2, 2.5.8)', () => {
    for (const sheet of sheets) {
      for (const { spot, word } of touchTargets(sheet)) {
        expect(spot.radius * 2).toBeGreaterThanOrEqual(24)
        expect(word.width).toBeGreaterThanOrEqual(24)
        expect(word.height).toBeGreaterThanOrEqual(24)
      }
    }
  })

  it('are announced by name, with what is known or not known', () => {
    const names = touchTargets(
      sheetOf(drawPlate(unknownEar, plateFacts, plateInEnglish), { width: 320, theme: 'light' }),
    ).map(({ name }) => name)
    expect(names).toContain('Drum: not assessed')
    expect(names).toContain('Promontory')
  })

  it('lie on the sheet where they lie on the plate, there and back', () => {
    for (const sheet of sheets) {
      const [x, y] = toScene(sheet, toSheet(sheet, [412, 333]))
      expect(Math.abs(x - 412)).toBeLessThan(0.1)
      expect(Math.abs(y - 333)).toBeLessThan(0.1)
    }
  })

  it('leave out what is switched off', () => {
    const sheet = sheetOf(drawPlate({ ...wellEar, layers: ['drum'] }, plateFacts, plateInEnglish), {
      width: 768,
      theme: 'light',
    })
    expect(touchTargets(sheet).some(({ structure }) => structure === 'facial-nerve')).toBe(false)
  })
})
