import type { FillRole, Scene, Shape, StrokeRole, StructureId } from './scene.ts'

/**
 * The same drawing with some parts lifted out: they keep their lines, words and touch areas; everything else becomes a
 * thin outline without words, so that the eye finds what is talked about. Nothing is moved and nothing is left out.
 *
 * @example liftedOut(scene, ['facial-nerve', 'nerve-to-lids']).labels // the nerve and its branch only
 */
export function liftedOut(scene: Scene, parts: readonly StructureId[]): Scene {
  const lifted = new Set<Shape['structure']>(parts)
  const shapes = scene.shapes.flatMap((shape) => (lifted.has(shape.structure) ? [shape] : stepBack(shape)))
  const used = new Set(shapes.flatMap(({ stroke, fill }): (StrokeRole | FillRole | null)[] => [stroke, fill]))
  return {
    ...scene,
    shapes,
    labels: scene.labels.filter(({ structure }) => lifted.has(structure)),
    hits: scene.hits.filter(({ structure }) => lifted.has(structure)),
    key: scene.key.filter(({ sample }) => used.has(sample)),
    notes: [],
  }
}

/** Textures go, hatches become paper, every line turns thin; what covers something still covers it. */
function stepBack(shape: Shape): Shape[] {
  if (shape.stroke === 'texture' || shape.stroke === 'question') return []
  const fill = shape.fill === null ? null : (quietFills[shape.fill] ?? 'paper')
  return [{ ...shape, stroke: shape.stroke === null ? null : 'faint', fill }]
}

/** Washes that still say what is bone and what is soft, without drawing the eye. */
const quietFills: Partial<Record<FillRole, FillRole>> = {
  tissue: 'tissue',
  bone: 'tissue',
  cartilage: 'tissue',
  lining: 'paper',
  air: 'paper',
}
