import { node, type SvgNode, svgText } from '#core/plate/svg-node.ts'
import type { Block } from '../render/model.ts'

export const look = { ink: '#1c2326', quiet: '#556166', line: '#c3cdd0', accent: '#1f5a66', font: 11 } as const
export const width = 640

/** A drawing with the same said in words. */
export function pictureOf(nodes: readonly SvgNode[], height: number, about: { alt: string; caption: string }): Block {
  const whole = node(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: String(width),
      height: String(height),
      viewBox: `0 0 ${width} ${height}`,
      role: 'img',
      'aria-label': about.alt,
      'font-family': "'Noto Sans', 'Liberation Sans', Arial, sans-serif",
    },
    nodes,
  )
  return { kind: 'picture', svg: `${svgText(whole)}\n`, ...about }
}

export function letters(
  word: string,
  [x, y]: readonly [number, number],
  anchor: 'start' | 'middle' | 'end' = 'start',
  fill: string = look.quiet,
): SvgNode {
  return node('text', { x: n(x), y: n(y), 'font-size': n(look.font), 'text-anchor': anchor, fill }, [word])
}

export function rule(
  [x1, y1]: readonly [number, number],
  [x2, y2]: readonly [number, number],
  stroke: string = look.line,
  more: Readonly<Record<string, string>> = {},
): SvgNode {
  return node('line', { x1: n(x1), y1: n(y1), x2: n(x2), y2: n(y2), stroke, 'stroke-width': '1', ...more })
}

/** Tenths of a pixel are enough for an eye. */
export function n(value: number): string {
  return String(Math.round(value * 10) / 10)
}
