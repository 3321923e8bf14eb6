import { cornersOf, type Point } from './geometry.ts'
import { type Box, type StructureId, structures } from './scene.ts'
import { pathData, type Sheet, toSheet } from './sheet.ts'

/** A part that can be touched or focused: its area, the point its word leads to, and the word itself. */
export type TouchTarget = {
  readonly structure: StructureId
  /** What is announced: `Drum: could not be seen`. */
  readonly name: string
  /** The area on the sheet as SVG path data; null where only the point can be touched. */
  readonly area: string | null
  readonly spot: { readonly at: Point; readonly radius: number }
  readonly word: Box
  /** Larger areas lie under smaller ones, so that a small part is not covered by the muscle around it. */
  readonly size: number
}

/** No smaller than a finger can hit: WCAG 2.2, success criterion 2.5.8, asks for 24 pixels. */
const least = 24

/**
 * What can be touched on a sheet, in anatomical order: from the flap inwards, then what lies around, then the
 * operation. The order in which the keyboard goes.
 *
 * @example touchTargets(sheetOf(scene, { width: 768, theme: 'light' })).map(({ name }) => name)
 */
export function touchTargets(sheet: Sheet): TouchTarget[] {
  const { scene, layout } = sheet
  return structures.flatMap((structure): TouchTarget[] => {
    const label = scene.labels.find((one) => one.structure === structure)
    const placed = layout.labels.find((one) => one.structure === structure)
    if (!label || !placed) return []
    const paths = scene.hits.filter((hit) => hit.structure === structure).map(({ path }) => path)
    const corners = paths.flatMap(cornersOf)
    return [
      {
        structure,
        name: label.state === null ? label.text : `${label.text}: ${label.state}`,
        area: paths.length > 0 ? paths.map((path) => pathData(sheet, path)).join('') : null,
        spot: { at: toSheet(sheet, label.at), radius: least / 2 },
        word: atLeast(placed.box),
        size: extent(corners),
      },
    ]
  })
}

function atLeast({ x, y, width, height }: Box): Box {
  const [wide, high] = [Math.max(width + 10, least), Math.max(height + 4, least)]
  return { x: x - (wide - width) / 2, y: y - (high - height) / 2, width: wide, height: high }
}

function extent(points: readonly Point[]): number {
  if (points.length === 0) return 0
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)]
  return (Math.max(...xs) - Math.min(...xs)) * (Math.max(...ys) - Math.min(...ys))
}
