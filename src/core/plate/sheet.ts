import { never } from '../outcome/outcome.ts'
import { type Path, type Point, round } from './geometry.ts'
import { type Layout, layoutPlate } from './layout.ts'
import type { Scene } from './scene.ts'
import type { Theme } from './theme.ts'

/** A scene laid out for one width and one theme. `line` is how much thicker or thinner lines are drawn there. */
export type Sheet = {
  readonly layout: Layout
  readonly scene: Scene
  readonly theme: Theme
  /** Begins every id, so that two plates on one page do not share their patterns. */
  readonly prefix: string
  readonly line: number
}

export type SheetWish = {
  readonly width: number
  readonly theme: Theme
  /** Size of the words in pixels; chosen by the width when not given. */
  readonly pixelLabels?: number
}

/**
 * Lays a scene out for a screen or a page.
 *
 * @example sheetOf(scene, { width: 768, theme: 'light' }).layout.height
 */
export function sheetOf(scene: Scene, wish: SheetWish): Sheet {
  const layout = layoutPlate(scene, wish)
  return {
    layout,
    scene,
    theme: wish.theme,
    prefix: `plate-${fingerprint(JSON.stringify(scene.parameters) + wish.width + wish.theme)}`,
    line: Math.min(Math.max(layout.drawing.width / 620, 0.6), 1.5),
  }
}

/** A short name from the text (FNV-1a, 32 bit). */
function fingerprint(text: string): string {
  let hash = 0x811c9dc5
  for (let i = 0; i < text.length; i += 1) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193) >>> 0
  return hash.toString(36)
}

/** A number as SVG writes it. */
export function n(value: number): string {
  return String(round(value))
}

/** A path of the scene in pixels of the sheet, as SVG path data. */
export function pathData({ layout, scene }: Sheet, path: Path): string {
  const { drawing } = layout
  const x = (value: number) => n(drawing.x + (value - scene.frame.x) * drawing.scale)
  const y = (value: number) => n(drawing.y + (value - scene.frame.y) * drawing.scale)
  return path
    .map((step) => {
      switch (step[0]) {
        case 'M':
        case 'L':
          return `${step[0]}${x(step[1])} ${y(step[2])}`
        case 'C':
          return `C${x(step[1])} ${y(step[2])} ${x(step[3])} ${y(step[4])} ${x(step[5])} ${y(step[6])}`
        case 'Z':
          return 'Z'
        default:
          return never(step)
      }
    })
    .join('')
}

/** Where a point of the plate lies on the sheet. */
export function toSheet({ layout, scene }: Sheet, [x, y]: Point): Point {
  const { drawing } = layout
  return [
    round(drawing.x + (x - scene.frame.x) * drawing.scale),
    round(drawing.y + (y - scene.frame.y) * drawing.scale),
  ]
}

/** Where a point of the sheet lies on the plate. */
export function toScene({ layout, scene }: Sheet, [x, y]: Point): Point {
  const { drawing } = layout
  return [scene.frame.x + (x - drawing.x) / drawing.scale, scene.frame.y + (y - drawing.y) / drawing.scale]
}
