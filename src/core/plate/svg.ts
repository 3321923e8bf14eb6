import type { Hand } from './hand.ts'
import { handNodes } from './hand-nodes.ts'
import { pattern } from './hatch.ts'
import type { Layout, PlacedLabel } from './layout.ts'
import type { FillRole, Scene, StrokeRole } from './scene.ts'
import { n, pathData, type Sheet, type SheetWish, sheetOf } from './sheet.ts'
import { node, type SvgNode, svgText } from './svg-node.ts'
import { type Hatch, hatches, inks, lines, washes } from './theme.ts'

export type SvgWish = SheetWish & {
  /** What a screen reader says; the description of the same parameters. */
  readonly description: string
  /** What somebody drew on it. */
  readonly hand?: Hand
}

/**
 * The scene as one SVG file, complete in itself: no script, no style sheet, no font, no other file.
 *
 * @example sceneToSvg(scene, { width: 768, theme: 'light', description })
 * Reference: SVG 1.1, second edition; only what browsers, printers and Typst draw alike.
 */
export function sceneToSvg(scene: Scene, wish: SvgWish): string {
  const sheet = sheetOf(scene, wish)
  const { width, height } = sheet.layout
  const { prefix } = sheet
  const whole = node(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: n(width),
      height: n(height),
      viewBox: `0 0 ${width} ${height}`,
      role: 'img',
      'aria-labelledby': `${prefix}-t ${prefix}-d`,
      'font-family': "'Noto Sans', 'Liberation Sans', Arial, sans-serif",
    },
    [
      node('title', { id: `${prefix}-t` }, [`${scene.title}. ${scene.subtitle}`]),
      node('desc', { id: `${prefix}-d` }, [wish.description]),
      ...sheetNodes(sheet),
      ...(wish.hand ? [handNodes(sheet, wish.hand)] : []),
    ],
  )
  return `${svgText(whole)}\n`
}

/** What is printed on the sheet, from the paper upwards; the hand of a person comes above it. */
export function sheetNodes(sheet: Sheet): SvgNode[] {
  const { layout, scene, theme, prefix } = sheet
  const { width, height, drawing } = layout
  const clip = node('rect', {
    x: n(drawing.x),
    y: n(drawing.y),
    width: n(drawing.width),
    height: n(drawing.height),
  })
  return [
    node('defs', {}, [
      node('clipPath', { id: `${prefix}-c` }, [clip]),
      ...hatches.map((hatch) => pattern(sheet, hatch)),
    ]),
    node('rect', { width: n(width), height: n(height), fill: inks[theme].paper }),
    node(
      'g',
      {
        'clip-path': `url(#${prefix}-c)`,
        'stroke-linecap': 'round',
        'stroke-linejoin': 'round',
        fill: 'none',
      },
      scene.shapes.flatMap((shape) => shapeNodes(sheet, shape)),
    ),
    node(
      'g',
      { 'stroke-linecap': 'round', fill: 'none' },
      layout.labels.flatMap((label) => leaderNodes(sheet, label)),
    ),
    ...footNodes(sheet),
    ...[...layout.labels, ...layout.texts, ...layout.key.map((row) => row.label)].flatMap((label) =>
      labelNodes(sheet, label),
    ),
  ]
}

function shapeNodes(sheet: Sheet, { path, stroke, fill }: Scene['shapes'][number]): SvgNode[] {
  const d = pathData(sheet, path)
  const filled = fill ? [node('path', { d, fill: fillOf(sheet, fill) })] : []
  return [...filled, ...(stroke ? strokeNodes(sheet, d, stroke) : [])]
}

function isHatch(fill: FillRole): fill is Hatch {
  return (hatches as readonly string[]).includes(fill)
}

function fillOf(sheet: Sheet, fill: FillRole): string {
  return isHatch(fill) ? `url(#${sheet.prefix}-${fill})` : inks[sheet.theme][washes[fill]]
}

function strokeNodes({ theme, line }: Sheet, d: string, role: StrokeRole): SvgNode[] {
  const look = lines[role]
  const colours = inks[theme]
  const cap = look.core && !look.inside ? 'butt' : null
  const outer = node('path', {
    d,
    stroke: colours[look.colour],
    'stroke-width': n(look.width * line),
    'stroke-dasharray': look.dash ? look.dash.map((part) => n(part * Math.max(line, 0.75))).join(' ') : null,
    'stroke-linecap': cap,
  })
  if (!look.core) return [outer]
  const inside = {
    d,
    stroke: colours[look.inside ?? 'paper'],
    'stroke-width': n(look.core * line),
    'stroke-linecap': cap,
  }
  return [outer, node('path', inside)]
}

function leaderNodes({ theme }: Sheet, { leader, weight }: PlacedLabel): SvgNode[] {
  const [from, to] = leader
  if (!from || !to) return []
  const anatomy = weight === 'anatomy'
  const ink = inks[theme][anatomy ? 'quiet' : 'accent']
  const d = `M${n(from[0])} ${n(from[1])}L${n(to[0])} ${n(to[1])}`
  return [
    node('path', { d, stroke: inks[theme].paper, 'stroke-width': '2.4', opacity: '0.75' }),
    node('path', { d, stroke: ink, 'stroke-width': anatomy ? '0.7' : '1' }),
    node('circle', { cx: n(to[0]), cy: n(to[1]), r: anatomy ? '1.6' : '2.2', fill: ink }),
  ]
}

function labelNodes({ theme, layout }: Sheet, label: PlacedLabel): SvgNode[] {
  const ink = inks[theme]
  return label.lines.map(({ text, x, y, strong, state }) => {
    const size = Math.round((label.box.height / label.lines.length / 1.25) * 10) / 10
    const font = layout.texts.includes(label) || !layout.labels.includes(label) ? size : layout.font
    return node(
      'text',
      {
        x: n(x),
        y: n(y),
        'font-size': n(Math.round(font)),
        'text-anchor': label.anchor,
        fill: label.weight !== 'anatomy' ? ink.accent : state ? ink.quiet : ink.ink,
        'font-weight': strong ? '600' : null,
      },
      [text],
    )
  })
}

function footNodes(sheet: Sheet): SvgNode[] {
  const { layout, theme } = sheet
  const bar = layout.scaleBar
  const scale = bar
    ? [
        node('path', {
          d: `M${n(bar.from[0])} ${n(bar.from[1] - 4)}V${n(bar.from[1] + 4)}M${n(bar.from[0])} ${n(bar.from[1])}H${n(bar.to[0])}M${n(bar.to[0])} ${n(bar.to[1] - 4)}V${n(bar.to[1] + 4)}`,
          stroke: inks[theme].ink,
          'stroke-width': '1.2',
          fill: 'none',
        }),
      ]
    : []
  return [...scale, ...layout.key.map((row) => keyNode(sheet, row))]
}

function keyNode(sheet: Sheet, { sample, role }: Layout['key'][number]): SvgNode {
  const middle = sample.y + sample.height / 2
  const d = `M${n(sample.x + 2)} ${n(middle)}H${n(sample.x + sample.width - 2)}`
  const isLine = role === 'unknown' || (role in lines && !isHatch(role as FillRole))
  if (isLine) return node('g', { fill: 'none', 'stroke-linecap': 'round' }, strokeNodes(sheet, d, role as StrokeRole))
  return node('rect', {
    x: n(sample.x + 1),
    y: n(sample.y),
    width: n(sample.width - 2),
    height: n(sample.height),
    fill: fillOf(sheet, role as FillRole),
    stroke: inks[sheet.theme].ink,
    'stroke-width': '0.7',
  })
}
