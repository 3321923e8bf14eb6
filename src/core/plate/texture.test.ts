import { describe, expect, it } from 'vitest'
import { cornersOf, distance, type Point, pointsOf, sampled } from './geometry.ts'
import { fibres, lobules, windings } from './texture.ts'

const muscle = pointsOf('200,100 420,90 460,300 330,420 180,330')

function inside([x, y]: Point, polygon: readonly Point[]): boolean {
  return polygon.reduce((within, [ax, ay], index) => {
    const [bx, by] = polygon[(index + 1) % polygon.length] ?? [ax, ay]
    return ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax ? !within : within
  }, false)
}

describe('the texture of a tissue', () => {
  it('stays inside the outline, whatever the direction of the fibres', () => {
    const outline = sampled(muscle, 12, true)
    for (const direction of [
      [0, 1],
      [1, 0],
      [0.22, 1],
      [-0.93, 0.37],
    ] as const) {
      const drawn = cornersOf(fibres(muscle, direction, 14))
      expect(drawn.length).toBeGreaterThan(10)
      for (const point of drawn) expect(inside(point, outline)).toBe(true)
    }
    const glands = cornersOf(lobules(muscle, 26))
    expect(glands.length).toBeGreaterThan(20)
    for (const point of glands) expect(inside(point, outline)).toBe(true)
  })

  it('winds along the inside of a line and never across it', () => {
    const line = pointsOf('100,100 300,80 500,120 560,300')
    const fold = cornersOf(windings(line, 1))
    const dense = sampled(line, 40)
    const away = fold.map((point) => Math.min(...dense.map((on) => distance(on, point))))
    expect(Math.min(...away)).toBeGreaterThan(4)
    expect(Math.max(...away)).toBeLessThan(60)
  })
})
