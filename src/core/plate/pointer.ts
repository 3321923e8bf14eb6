import type { Point } from './geometry.ts'

export type PointerKind = 'pen' | 'mouse' | 'touch'

/** The hand over the plate. */
export type PointerState = {
  readonly drawing: { readonly pointer: number; readonly kind: PointerKind; readonly points: readonly Point[] } | null
  /** Fingers that are down, drawing or not. */
  readonly fingers: readonly number[]
  /** Once a pen has drawn here, fingers rest and move the page; they no longer draw. */
  readonly penDraws: boolean
  /** Two fingers were down: nothing is drawn until both are off again. */
  readonly liftedFirst: boolean
}

export type PointerNews =
  | { readonly news: 'down'; readonly pointer: number; readonly kind: PointerKind; readonly at: Point }
  | { readonly news: 'move'; readonly pointer: number; readonly through: readonly Point[] }
  | { readonly news: 'up'; readonly pointer: number }
  /** The browser took the pointer, to scroll or to zoom. */
  | { readonly news: 'cancel'; readonly pointer: number }

export const handAway: PointerState = { drawing: null, fingers: [], penDraws: false, liftedFirst: false }

/**
 * What the news of a pointer do to the hand. One pointer draws; two fingers never do, and what the first had begun is
 * dropped; a palm beside a pen is no finger; a pen takes over from a palm that came first.
 *
 * @example afterPointer(handAway, { news: 'down', pointer: 1, kind: 'pen', at: [0, 0] }).state.drawing?.points
 * Reference: W3C Pointer Events, level 3: pointerId, pointerType, coalesced events, pointercancel.
 */
export function afterPointer(
  state: PointerState,
  news: PointerNews,
): { readonly state: PointerState; readonly finished: readonly Point[] | null } {
  switch (news.news) {
    case 'down':
      return { state: put(state, news), finished: null }
    case 'move': {
      const { drawing } = state
      if (drawing?.pointer !== news.pointer) return { state, finished: null }
      return {
        state: { ...state, drawing: { ...drawing, points: [...drawing.points, ...news.through] } },
        finished: null,
      }
    }
    case 'up':
    case 'cancel': {
      const { drawing } = state
      const fingers = state.fingers.filter((finger) => finger !== news.pointer)
      const own = drawing?.pointer === news.pointer
      return {
        state: {
          ...state,
          fingers,
          drawing: own ? null : drawing,
          liftedFirst: state.liftedFirst && fingers.length > 0,
        },
        finished: own && news.news === 'up' ? drawing.points : null,
      }
    }
    default: {
      const unreachable: never = news
      return unreachable
    }
  }
}

function put(state: PointerState, { pointer, kind, at }: Extract<PointerNews, { news: 'down' }>): PointerState {
  const begun = { pointer, kind, points: [at] }
  if (kind !== 'touch') {
    const free = state.drawing === null || state.drawing.kind === 'touch'
    return { ...state, drawing: free ? begun : state.drawing, penDraws: state.penDraws || kind === 'pen' }
  }
  const fingers = [...state.fingers, pointer]
  if (state.drawing?.kind === 'touch') return { ...state, fingers, drawing: null, liftedFirst: true }
  if (state.drawing !== null || state.penDraws || state.liftedFirst || fingers.length > 1) return { ...state, fingers }
  return { ...state, fingers, drawing: begun }
}
