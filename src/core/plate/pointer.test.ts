import { describe, expect, it } from 'vitest'
import type { Point } from './geometry.ts'
import { afterPointer, handAway, type PointerKind, type PointerNews } from './pointer.ts'

const down = (pointer: number, kind: PointerKind, at: Point = [0, 0]): PointerNews => ({
  news: 'down',
  pointer,
  kind,
  at,
})
const move = (pointer: number, ...through: Point[]): PointerNews => ({ news: 'move', pointer, through })
const up = (pointer: number): PointerNews => ({ news: 'up', pointer })

/** All strokes that were finished by some news, one after the other. */
function drawn(...news: PointerNews[]): (readonly Point[])[] {
  let state = handAway
  const strokes: (readonly Point[])[] = []
  for (const one of news) {
    const after = afterPointer(state, one)
    state = after.state
    if (after.finished) strokes.push(after.finished)
  }
  return strokes
}

describe('the hand over the plate', () => {
  it('draws with one finger, one pen, one mouse, through every coalesced point', () => {
    for (const kind of ['touch', 'pen', 'mouse'] as const) {
      expect(drawn(down(1, kind, [1, 1]), move(1, [2, 2], [3, 3]), move(1, [4, 4]), up(1))).toEqual([
        [
          [1, 1],
          [2, 2],
          [3, 3],
          [4, 4],
        ],
      ])
    }
  })

  it('never draws with two fingers, and begins again only after both are lifted', () => {
    expect(
      drawn(down(1, 'touch'), move(1, [5, 5]), down(2, 'touch'), move(2, [6, 6]), up(2), move(1, [7, 7]), up(1)),
    ).toEqual([])
    expect(
      drawn(down(1, 'touch'), down(2, 'touch'), up(1), down(3, 'touch'), up(3), up(2), down(4, 'touch', [9, 9]), up(4)),
    ).toEqual([[[9, 9]]])
  })

  it('takes no palm for a finger: beside the pen, before it, or after it has drawn', () => {
    expect(drawn(down(1, 'pen', [1, 1]), down(2, 'touch'), move(1, [2, 2]), move(2, [8, 8]), up(2), up(1))).toEqual([
      [
        [1, 1],
        [2, 2],
      ],
    ])
    expect(drawn(down(2, 'touch'), move(2, [8, 8]), down(1, 'pen', [1, 1]), up(1), up(2))).toEqual([[[1, 1]]])
    expect(drawn(down(1, 'pen'), up(1), down(2, 'touch', [8, 8]), move(2, [9, 9]), up(2))).toEqual([[[0, 0]]])
  })

  it('drops a stroke that the browser takes away to scroll or zoom', () => {
    expect(drawn(down(1, 'touch'), move(1, [5, 5]), { news: 'cancel', pointer: 1 }, up(1))).toEqual([])
  })
})
