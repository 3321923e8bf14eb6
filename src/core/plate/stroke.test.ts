import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cornersOf, distance, type Point } from './geometry.ts'
import { mostPoints } from './hand.ts'
import { simplified, strokeFrom, strokePath } from './stroke.ts'

const coordinate = fc.double({ min: 0, max: 1000, noNaN: true })
const anyPoint: fc.Arbitrary<Point> = fc.tuple(coordinate, coordinate)
const anyLine = fc.array(anyPoint, { minLength: 1, maxLength: 120 })

/** From a point to the nearest place of a chain of straight pieces. */
function toChain(point: Point, chain: readonly Point[]): number {
  const pieces = chain.length === 1 ? [[chain[0], chain[0]]] : chain.slice(1).map((end, index) => [chain[index], end])
  return Math.min(...pieces.map(([a, b]) => (a && b ? toPiece(point, a, b) : Number.POSITIVE_INFINITY)))
}

function toPiece(point: Point, a: Point, b: Point): number {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]]
  const long = dx * dx + dy * dy || 1
  const share = Math.min(Math.max(((point[0] - a[0]) * dx + (point[1] - a[1]) * dy) / long, 0), 1)
  return distance(point, [a[0] + share * dx, a[1] + share * dy])
}

describe('a stroke', () => {
  it('keeps its ends where the hand put them, in whole tenths', () => {
    fc.assert(
      fc.property(anyLine, (line) => {
        const { points } = strokeFrom(line, 'pen')
        const [first, last] = [line[0], line.at(-1)]
        expect(points.every(Number.isInteger)).toBe(true)
        expect(points.length % 2).toBe(0)
        expect([points[0], points[1]]).toEqual([Math.round((first?.[0] ?? 0) * 10), Math.round((first?.[1] ?? 0) * 10)])
        expect(points.slice(-2)).toEqual([Math.round((last?.[0] ?? 0) * 10), Math.round((last?.[1] ?? 0) * 10)])
      }),
    )
  })

  it('loses only points that lie on the line that is kept (Douglas and Peucker 1973)', () => {
    fc.assert(
      fc.property(anyLine, fc.double({ min: 0.1, max: 20, noNaN: true }), (line, within) => {
        const kept = simplified(line, within)
        for (const point of line) expect(toChain(point, kept)).toBeLessThanOrEqual(within + 1e-9)
      }),
    )
  })

  it('is two points when the hand went straight, and loses the tremor of half a unit', () => {
    const straight = Array.from({ length: 80 }, (_, index): Point => [100 + index * 5, 300])
    expect(strokeFrom(straight, 'pen').points).toEqual([1000, 3000, 4950, 3000])
    const trembling = straight.map(([x, y], index): Point => [x, y + (index % 2 === 0 ? 0.5 : -0.5)])
    expect(strokeFrom(trembling, 'pen').points.length).toBeLessThanOrEqual(8)
  })

  it('never holds more points than an entry takes', () => {
    const scribble = Array.from({ length: 9_000 }, (_, index): Point => [(index * 37) % 940, (index * 91) % 880])
    expect(strokeFrom(scribble, 'pen').points.length).toBeLessThanOrEqual(2 * mostPoints)
  })

  it('passes every kept point when drawn again, and a single touch is a dot that shows', () => {
    const stroke = strokeFrom(
      [
        [100, 100],
        [180, 150],
        [220, 260],
      ],
      'pen',
    )
    const corners = cornersOf(strokePath(stroke)).flatMap(([x, y]) => [Math.round(x * 10), Math.round(y * 10)])
    expect(corners).toEqual(stroke.points)
    const dot = strokePath(strokeFrom([[412.34, 500]], 'pen'))
    expect(dot).toEqual([
      ['M', 412.3, 500],
      ['L', 412.4, 500],
    ])
  })
})
