import type { Point } from '#core/plate/geometry.ts'
import { simplified } from '#core/plate/stroke.ts'

/** The box a signature is drawn in. */
export const signatureBox = { width: 6000, height: 2000 } as const

/** As many points as an entry keeps of one stroke. */
const mostPoints = 1_200

/**
 * One movement of the hand as it is kept: whole numbers inside the box, without the points that change nothing.
 *
 * @example strokeOfHand([[10.4, 20], [11, 20], [500, 90]]) // [10, 20, 500, 90]
 */
export function strokeOfHand(given: readonly Point[]): number[] {
  const { width, height } = signatureBox
  let kept = simplified(given, 4)
  for (let wider = 8; kept.length > mostPoints; wider *= 2) kept = simplified(kept, wider)
  const within = (value: number, most: number) => Math.min(Math.max(Math.round(value), 0), most) + 0
  return kept.flatMap(([x, y]) => [within(x, width), within(y, height)])
}

/**
 * The line of a stroke; a single touch is a dot.
 *
 * @example strokeLine([10, 20, 500, 90]) // 'M 10 20 L 500 90'
 */
export function strokeLine(points: readonly number[]): string {
  const corners: string[] = []
  for (let index = 0; index + 1 < points.length; index += 2) corners.push(`${points[index]} ${points[index + 1]}`)
  const [first = '0 0', ...rest] = corners
  return `M ${first} L ${rest.length === 0 ? first : rest.join(' L ')}`
}

/**
 * A signature as a drawing complete in itself, for paper.
 *
 * @example signatureSvg([{ points: [10, 20, 500, 90] }], 'Signature of Amara Okafor')
 */
export function signatureSvg(strokes: readonly { readonly points: readonly number[] }[], name: string): string {
  const { width, height } = signatureBox
  const escaped = name.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;')
  const paths = strokes.map(({ points }) => `<path d="${strokeLine(points)}"/>`).join('')
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="360" height="120"><title>${escaped}</title><g fill="none" stroke="#000000" stroke-width="36" stroke-linecap="round" stroke-linejoin="round">${paths}</g></svg>`
}
