import { describe, expect, it } from 'vitest'
import { plateFacts } from '#content/plate/plate-facts.ts'
import { plateInEnglish } from '#content/wording/plate.ts'
import { describePlate } from './describe.ts'
import { drawPlate } from './draw-plate.ts'
import { cornersOf, distance } from './geometry.ts'
import type { Hand } from './hand.ts'
import { markPath } from './marks.ts'
import { wellEar } from './plates-for-tests.ts'
import { strokeFrom } from './stroke.ts'
import { sceneToSvg } from './svg.ts'

const scene = drawPlate(wellEar, plateFacts, plateInEnglish)
const drum = scene.labels.find(({ structure }) => structure === 'drum')?.at ?? [Number.NaN, Number.NaN]
const hand: Hand = {
  strokes: [
    strokeFrom(
      [
        [400, 560],
        [480, 590],
        [560, 580],
      ],
      'pen',
    ),
    strokeFrom(
      [
        [700, 600],
        [760, 640],
      ],
      'marker',
    ),
  ],
  marks: [{ structure: 'drum', sign: 'ring' }],
}
const wish = { width: 640, theme: 'light', description: '' } as const

describe('what was drawn by hand', () => {
  it('lies above everything printed, and takes nothing of it away', () => {
    const [plain, drawn] = [sceneToSvg(scene, wish), sceneToSvg(scene, { ...wish, hand })]
    expect(drawn.startsWith(plain.replace(/<\/svg>\s*$/, ''))).toBe(true)
    expect(drawn.match(/stroke="#5d2a8c"/g)).toHaveLength(3)
    expect(drawn).not.toMatch(/NaN|undefined/)
  })

  it('rings a part round its point and points an arrow at it, from inside the frame', () => {
    const ring = cornersOf(markPath(scene, { structure: 'drum', sign: 'ring' }) ?? [])
    for (const point of ring) expect(distance(point, drum)).toBeCloseTo(30, 0)
    const arrow = cornersOf(markPath(scene, { structure: 'drum', sign: 'arrow' }) ?? [])
    expect(Math.min(...arrow.map((point) => distance(point, drum)))).toBeLessThan(12)
    for (const [x, y] of arrow) {
      expect(x).toBeGreaterThan(scene.frame.x)
      expect(y).toBeLessThan(scene.frame.y + scene.frame.height)
    }
  })

  it('marks nothing that is not on the drawing', () => {
    const without = drawPlate({ ...wellEar, layers: ['bulla'] }, plateFacts, plateInEnglish)
    expect(markPath(without, { structure: 'drum', sign: 'ring' })).toBeNull()
  })

  it('is said in words: how many lines, which parts', () => {
    expect(describePlate(scene, plateInEnglish, hand)).toMatch(
      /2 lines were drawn on it by hand. Marked by hand: Drum.$/,
    )
    expect(describePlate(scene, plateInEnglish)).not.toContain('by hand')
  })
})
