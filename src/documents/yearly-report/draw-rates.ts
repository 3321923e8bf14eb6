import { ownOutcomeNames } from '#content/wording/own-figures.ts'
import { yearlyReportWords } from '#content/wording/yearly-report.ts'
import { node, type SvgNode } from '#core/plate/svg-node.ts'
import type { YearlyRate } from '#core/yearly/yearly-rate.ts'
import type { Block } from '../render/model.ts'
import { letters, look, n, pictureOf, rule, width } from './drawing.ts'

const left = 270
const right = 24
const row = 22
const top = 10

/** Every rate that is said with its exact interval as a dot on a line; where nobody had it only how far the line reaches. */
export function drawRates(
  rates: readonly YearlyRate[],
  alt: string,
  caption: string = yearlyReportWords.rates.chart,
): Block | null {
  const drawn = rates.filter(({ said }) => said === 'shown' || said === 'none-yet')
  if (drawn.length === 0) return null
  const most = Math.max(...drawn.map(({ exact, upTo }) => exact?.[1] ?? upTo ?? 0))
  const end = [0.1, 0.2, 0.5].find((one) => most <= one) ?? 1
  const x = (share: number) => left + ((width - left - right) * share) / end
  const bottom = top + drawn.length * row
  const marks = [0, 0.25, 0.5, 0.75, 1].map((part) => part * end)
  const nodes: SvgNode[] = [
    ...marks.flatMap((share) => [
      rule([x(share), top], [x(share), bottom]),
      letters(n(100 * share), [x(share), bottom + 16], 'middle'),
    ]),
    ...drawn.flatMap((rate, place) => {
      const y = top + place * row + row / 2
      return [letters(ownOutcomeNames[rate.outcome], [0, y + 4], 'start', look.ink), ...whisker(rate, x, y)]
    }),
  ]
  return pictureOf(nodes, bottom + 24, { alt, caption })
}

function whisker({ share, exact, upTo }: YearlyRate, x: (share: number) => number, y: number): SvgNode[] {
  if (share === null || exact === null) {
    const end = x(upTo ?? 0)
    return [
      rule([x(0), y], [end, y], look.quiet, { 'stroke-dasharray': '3 3', 'stroke-width': '1.5' }),
      rule([end, y - 5], [end, y + 5], look.quiet, { 'stroke-width': '1.5' }),
    ]
  }
  return [
    rule([x(exact[0]), y], [x(exact[1]), y], look.accent, { 'stroke-width': '2' }),
    ...exact.map((end) => rule([x(end), y - 5], [x(end), y + 5], look.accent, { 'stroke-width': '1.5' })),
    node('circle', { cx: n(x(share)), cy: n(y), r: '4', fill: look.accent }),
  ]
}
