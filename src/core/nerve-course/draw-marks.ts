import { node, type SvgNode } from '#core/plate/svg-node.ts'
import type { Change } from './sign-course.ts'

type Look = { readonly font: number; readonly colours: { readonly ink: string } }

/** A number of a drawing: two places are finer than any screen. */
export function n(value: number): string {
  return String(Math.round(value * 100) / 100)
}

export function stroke(
  [x1, y1]: readonly [number, number],
  [x2, y2]: readonly [number, number],
  colour: string,
  more: Readonly<Record<string, string | null>>,
): SvgNode {
  return node('line', { x1: n(x1), y1: n(y1), x2: n(x2), y2: n(y2), stroke: colour, ...more })
}

export function letters(
  words: string,
  at: {
    readonly x: number
    readonly y: number
    readonly anchor: 'start' | 'middle' | 'end'
    readonly colour: string
    readonly bold?: boolean
  },
  { font }: Look,
): SvgNode {
  return node(
    'text',
    {
      x: n(at.x),
      y: n(at.y),
      'text-anchor': at.anchor,
      fill: at.colour,
      'font-size': n(font),
      'font-weight': at.bold === true ? '600' : null,
    },
    [words],
  )
}

const ringed: ReadonlySet<Change> = new Set(['possible-block', 'after-anaesthetic', 'not-attributable', 'blinked'])

/**
 * The mark of one look, told apart by shape and not by colour alone: filled where it was examined, an open ring where it
 * is not graded or nobody can say whose doing it is, an open triangle where it was only told.
 *
 * @example markOf('told', 120, 40, look, 'black').tag // 'path'
 */
export function markOf(change: Change, x: number, y: number, { font }: Look, colour: string): SvgNode {
  const r = font * 0.34
  const open = { fill: 'none', stroke: colour, 'stroke-width': '2' }
  if (change === 'told') {
    const [up, down] = [y - r * 1.2, y + r]
    return node('path', { d: `M${n(x)} ${n(up)}L${n(x + r * 1.2)} ${n(down)}H${n(x - r * 1.2)}Z`, ...open })
  }
  const circle = { cx: n(x), cy: n(y), r: n(r) }
  return node('circle', ringed.has(change) ? { ...circle, ...open } : { ...circle, fill: colour })
}
