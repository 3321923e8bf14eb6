import { node, type SvgNode } from '#core/plate/svg-node.ts'
import type { YearlyTracts } from '#core/yearly/report-of.ts'
import type { Block } from '../render/model.ts'
import { letters, look, n, pictureOf, rule, width } from './drawing.ts'

const height = 220
const left = 44
const bottom = 28
const top = 10

type Scale = { readonly x: (value: number) => number; readonly y: (value: number) => number }

function scaleOf(longest: number, highest: number): Scale {
  return {
    x: (value) => left + ((width - left - 10) * value) / Math.max(1, longest),
    y: (value) => top + (height - top - bottom) * (1 - value / highest),
  }
}

/** The share with a tract by days, as a staircase with its limits; null where none is said. */
export function drawCurve(steps: YearlyTracts['steps'], about: { alt: string; caption: string }): Block | null {
  const said = steps.flatMap((step) => (step.share === null ? [] : [{ ...step, share: step.share }]))
  if (!said.some(({ share }) => share > 0)) return null
  const most = Math.max(...said.map(({ share, interval }) => interval?.[1] ?? share))
  const highest = [0.05, 0.1, 0.2, 0.5].find((one) => most <= one) ?? 1
  const last = said.at(-1)?.day ?? 1
  const scale = scaleOf(last, highest)
  const days = Array.from({ length: Math.floor(last / 90) + 1 }, (_, i) => 90 * i)
  const stair = (of: (step: (typeof said)[number]) => number | null) => staircase(said, of, scale)
  const nodes = [
    ...axis([0, highest / 2, highest], (share) => n(100 * share), scale),
    ...days.map((day) => letters(String(day), [scale.x(day), height - 8], 'middle')),
    ...[1, 0].map((end) =>
      path(
        stair(({ interval }) => interval?.[end] ?? null),
        look.quiet,
        { 'stroke-dasharray': '4 3' },
      ),
    ),
    path(
      stair(({ share }) => share),
      look.accent,
      { 'stroke-width': '2.2' },
    ),
  ]
  return pictureOf(nodes, height, about)
}

/** A line over results in their order, with the level at which it signals. */
export function drawLine(line: readonly number[], limit: number, about: { alt: string; caption: string }): Block {
  const highest = Math.max(limit * 1.15, ...line)
  const scale = scaleOf(line.length, highest)
  const places = [0, 0.25, 0.5, 0.75, 1].map((part) => Math.round(part * line.length))
  const points = [0, ...line].map((value, place) => `${n(scale.x(place))},${n(scale.y(value))}`)
  const nodes = [
    ...axis([0, limit], n, scale),
    rule([left, scale.y(limit)], [width - 10, scale.y(limit)], look.ink, { 'stroke-dasharray': '6 4' }),
    ...places.map((place) => letters(String(place), [scale.x(place), height - 8], 'middle')),
    node('polyline', { points: points.join(' '), fill: 'none', stroke: look.accent, 'stroke-width': '2' }),
  ]
  return pictureOf(nodes, height, about)
}

function axis(values: readonly number[], say: (value: number) => string, { y }: Scale): SvgNode[] {
  return values.flatMap((value) => [
    rule([left, y(value)], [width - 10, y(value)]),
    letters(say(value), [left - 6, y(value) + 4], 'end'),
  ])
}

function path(d: string, stroke: string, more: Readonly<Record<string, string>>): SvgNode {
  return node('path', { d, fill: 'none', stroke, ...more })
}

/** Along to the day of the next line, then up; where there is no value nothing is drawn. */
function staircase<Step extends { readonly day: number }>(
  steps: readonly Step[],
  of: (step: Step) => number | null,
  { x, y }: Scale,
): string {
  let drawn = ''
  for (const step of steps) {
    const value = of(step)
    if (value === null) continue
    const [along, up] = [n(x(step.day)), n(y(value))]
    drawn += drawn === '' ? `M${along} ${up}` : `H${along}V${up}`
  }
  return drawn === '' ? 'M0 0' : drawn
}
