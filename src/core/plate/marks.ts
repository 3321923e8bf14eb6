import { circle, type Path, type Point, round } from './geometry.ts'
import type { Mark } from './hand.ts'
import type { Scene } from './scene.ts'

const ringRadius = 30
const arrowLength = 88
const arrowGap = 10
const headLength = 24

/**
 * The ring round a part, or the arrow that points at it; null when the part is not on this drawing (its layer is off).
 *
 * @example markPath(scene, { structure: 'drum', sign: 'ring' })
 */
export function markPath(scene: Scene, { structure, sign }: Mark): Path | null {
  const label = scene.labels.find((one) => one.structure === structure)
  if (!label) return null
  return sign === 'ring' ? circle(label.at, ringRadius) : arrow(label.at, scene)
}

/** From the nearer side of the sheet, from below, with an open head: it hides as little as it can. */
function arrow([x, y]: Point, { frame }: Scene): Path {
  const from = x < frame.x + frame.width / 2 ? -1 : 1
  const rise = y + arrowLength > frame.y + frame.height ? -1 : 1
  const at = (along: number, aside: number): readonly [number, number] => [
    round(x + from * Math.SQRT1_2 * along + from * Math.SQRT1_2 * aside),
    round(y + rise * Math.SQRT1_2 * along - rise * Math.SQRT1_2 * aside),
  ]
  return [
    ['M', ...at(arrowLength, 0)],
    ['L', ...at(arrowGap, 0)],
    ['M', ...at(arrowGap + headLength, headLength * 0.55)],
    ['L', ...at(arrowGap, 0)],
    ['L', ...at(arrowGap + headLength, -headLength * 0.55)],
  ]
}
