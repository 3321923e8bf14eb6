import { never } from '../outcome/outcome.ts'
import { n, type Sheet } from './sheet.ts'
import { node, type SvgNode } from './svg-node.ts'
import { type Hatch, inks } from './theme.ts'

/** Each hatch has its own figure: waves, dots, crosses, slanted lines one way or the other, sparse dots. */
export function pattern({ prefix, theme, line }: Sheet, hatch: Hatch): SvgNode {
  const ink = inks[theme]
  const s = 8 * Math.max(line, 0.7)
  const ground = {
    filled: ink.paper,
    mineral: ink.cartilage,
    mass: ink.paper,
    opened: null,
    'leave-alone': null,
    unknown: ink.tissue,
  }[hatch]
  return node('pattern', { id: `${prefix}-${hatch}`, width: n(s), height: n(s), patternUnits: 'userSpaceOnUse' }, [
    ...(ground === null ? [] : [node('rect', { width: n(s), height: n(s), fill: ground })]),
    ...figure(hatch, s, line, ink),
  ])
}

function figure(hatch: Hatch, s: number, line: number, ink: (typeof inks)['light']): SvgNode[] {
  const stroke = (d: string, colour: string, width: number) =>
    node('path', { d, stroke: colour, 'stroke-width': n(width), fill: 'none' })
  const dot = (x: number, y: number, r: number, colour: string) =>
    node('circle', { cx: n(x * s), cy: n(y * s), r: n(r * Math.max(line, 0.7)), fill: colour })
  switch (hatch) {
    case 'filled':
      return [
        stroke(
          `M0 ${n(s * 0.5)}C${n(s * 0.25)} ${n(s * 0.2)} ${n(s * 0.25)} ${n(s * 0.2)} ${n(s * 0.5)} ${n(s * 0.5)}S${n(s * 0.75)} ${n(s * 0.8)} ${n(s)} ${n(s * 0.5)}`,
          ink.accent,
          1,
        ),
      ]
    case 'mineral':
      return [
        dot(0.2, 0.25, 1.1, ink.ink),
        dot(0.7, 0.2, 0.8, ink.ink),
        dot(0.45, 0.6, 1.2, ink.ink),
        dot(0.9, 0.75, 0.9, ink.ink),
        dot(0.1, 0.85, 0.9, ink.ink),
      ]
    case 'mass':
      return [
        stroke(`M${n(s * 0.3)} ${n(s * 0.5)}H${n(s * 0.7)}M${n(s * 0.5)} ${n(s * 0.3)}V${n(s * 0.7)}`, ink.accent, 1.1),
      ]
    case 'opened':
      return [stroke(`M0 ${n(s)}L${n(s)} 0`, ink.accent, 1.3)]
    case 'leave-alone':
      return [stroke(`M0 0L${n(s)} ${n(s)}M0 ${n(s)}L${n(s)} 0`, ink.quiet, 0.6)]
    case 'unknown':
      return [dot(0.5, 0.5, 0.6, ink.quiet)]
    default:
      return never(hatch)
  }
}
