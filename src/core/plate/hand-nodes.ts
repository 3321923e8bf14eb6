import type { Path } from './geometry.ts'
import type { Hand, Stroke } from './hand.ts'
import { markPath } from './marks.ts'
import { n, pathData, type Sheet } from './sheet.ts'
import { strokePath } from './stroke.ts'
import { node, type SvgNode } from './svg-node.ts'
import { inks } from './theme.ts'

/**
 * What a person drew, above everything printed and inside the drawing's own frame: the words beside it stand elsewhere
 * on every width of paper, the plate does not.
 *
 * @example handNodes(sheet, { strokes, marks: [{ structure: 'drum', sign: 'ring' }] })
 */
export function handNodes(sheet: Sheet, { strokes, marks }: Hand): SvgNode {
  const signs = marks.flatMap((mark) => {
    const path = markPath(sheet.scene, mark)
    return path ? markNodes(sheet, path) : []
  })
  return node(
    'g',
    { 'clip-path': `url(#${sheet.prefix}-c)`, fill: 'none', 'stroke-linecap': 'round', 'stroke-linejoin': 'round' },
    [...strokes.flatMap((stroke) => strokeNodes(sheet, stroke)), ...signs],
  )
}

/** A pen line has an edge of paper, so that it stands off the printed lines without its colour. */
function strokeNodes(sheet: Sheet, stroke: Stroke): SvgNode[] {
  const d = pathData(sheet, strokePath(stroke))
  const width = (stroke.width / 10) * sheet.layout.drawing.scale
  if (stroke.tool === 'marker')
    return [node('path', { d, stroke: inks[sheet.theme].hand, 'stroke-width': n(width), 'stroke-opacity': '0.3' })]
  return cased(sheet, d, Math.max(width, 1.2))
}

function markNodes(sheet: Sheet, path: Path): SvgNode[] {
  return cased(sheet, pathData(sheet, path), 2.6 * Math.max(sheet.line, 0.8))
}

function cased({ theme }: Sheet, d: string, width: number): SvgNode[] {
  return [
    node('path', { d, stroke: inks[theme].paper, 'stroke-width': n(width + 2.4), 'stroke-opacity': '0.85' }),
    node('path', { d, stroke: inks[theme].hand, 'stroke-width': n(width) }),
  ]
}
