import { never } from '../outcome/outcome.ts'
import { type Path, type Point, round } from './geometry.ts'
import { type Layout, layoutPlate, type PlacedLabel } from './layout.ts'
import type { FillRole, Scene, StrokeRole } from './scene.ts'
import { type Hatch, hatches, inks, lines, type Theme, washes } from './theme.ts'

export type SvgWish = {
  readonly width: number
  readonly theme: Theme
  /** Size of the words in pixels; chosen by the width when not given. */
  readonly pixelLabels?: number
  /** What a screen reader says; the description of the same parameters. */
  readonly description: string
}

type Sheet = {
  readonly layout: Layout
  readonly scene: Scene
  readonly theme: Theme
  readonly prefix: string
  readonly line: number
}

/**
 * The scene as one SVG file, complete in itself: no script, no style sheet, no font, no other file.
 *
 * @example sceneToSvg(scene, { width: 768, theme: 'light', description })
 * Reference: SVG 1.1, second edition; only what browsers, printers and Typst draw alike.
 */
export function sceneToSvg(scene: Scene, wish: SvgWish): string {
  const layout = layoutPlate(scene, wish)
  const prefix = `plate-${fingerprint(JSON.stringify(scene.parameters) + wish.width + wish.theme)}`
  const line = Math.min(Math.max(layout.drawing.width / 620, 0.6), 1.5)
  const sheet: Sheet = { layout, scene, theme: wish.theme, prefix, line }
  const { width, height, drawing } = layout
  const ink = inks[wish.theme]
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" role="img" aria-labelledby="${prefix}-t ${prefix}-d" font-family="'Noto Sans', 'Liberation Sans', Arial, sans-serif">`,
    `<title id="${prefix}-t">${escaped(`${scene.title}. ${scene.subtitle}`)}</title>`,
    `<desc id="${prefix}-d">${escaped(wish.description)}</desc>`,
    `<defs><clipPath id="${prefix}-c"><rect x="${n(drawing.x)}" y="${n(drawing.y)}" width="${n(drawing.width)}" height="${n(drawing.height)}"/></clipPath>${hatches.map((hatch) => pattern(sheet, hatch)).join('')}</defs>`,
    `<rect width="${width}" height="${height}" fill="${ink.paper}"/>`,
    `<g clip-path="url(#${prefix}-c)" stroke-linecap="round" stroke-linejoin="round" fill="none">`,
    ...scene.shapes.map((shape) => shapeSvg(sheet, shape)),
    '</g>',
    `<g stroke-linecap="round" fill="none">`,
    ...layout.labels.map((label) => leaderSvg(sheet, label)),
    '</g>',
    ...footSvg(sheet),
    ...[...layout.labels, ...layout.texts, ...layout.key.map((row) => row.label)].map((label) =>
      labelSvg(sheet, label),
    ),
    '</svg>',
    '',
  ].join('\n')
}

function n(value: number): string {
  return String(round(value))
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;')
}

/** A short name from the text, so that two plates on one page do not share their patterns (FNV-1a, 32 bit). */
function fingerprint(text: string): string {
  let hash = 0x811c9dc5
  for (let i = 0; i < text.length; i += 1) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193) >>> 0
  return hash.toString(36)
}

function pathData({ layout, scene }: Sheet, path: Path): string {
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

function shapeSvg(sheet: Sheet, { path, stroke, fill }: Scene['shapes'][number]): string {
  const d = pathData(sheet, path)
  const filled = fill ? `<path d="${d}" fill="${fillOf(sheet, fill)}"/>` : ''
  return filled + (stroke ? strokeSvg(sheet, d, stroke) : '')
}

function isHatch(fill: FillRole): fill is Hatch {
  return (hatches as readonly string[]).includes(fill)
}

function fillOf(sheet: Sheet, fill: FillRole): string {
  return isHatch(fill) ? `url(#${sheet.prefix}-${fill})` : inks[sheet.theme][washes[fill]]
}

function strokeSvg({ theme, line }: Sheet, d: string, role: StrokeRole): string {
  const look = lines[role]
  const colours = inks[theme]
  const dash = look.dash
    ? ` stroke-dasharray="${look.dash.map((part) => n(part * Math.max(line, 0.75))).join(' ')}"`
    : ''
  const cap = look.core && !look.inside ? ' stroke-linecap="butt"' : ''
  const outer = `<path d="${d}" stroke="${colours[look.colour]}" stroke-width="${n(look.width * line)}"${dash}${cap}/>`
  return look.core
    ? `${outer}<path d="${d}" stroke="${colours[look.inside ?? 'paper']}" stroke-width="${n(look.core * line)}"${cap}/>`
    : outer
}

function leaderSvg({ theme }: Sheet, { leader, weight }: PlacedLabel): string {
  const [from, to] = leader
  if (!from || !to) return ''
  const ink = inks[theme][weight === 'anatomy' ? 'quiet' : 'accent']
  const d = `M${n(from[0])} ${n(from[1])}L${n(to[0])} ${n(to[1])}`
  return `<path d="${d}" stroke="${inks[theme].paper}" stroke-width="2.4" opacity="0.75"/><path d="${d}" stroke="${ink}" stroke-width="${weight === 'anatomy' ? 0.7 : 1}"/><circle cx="${n(to[0])}" cy="${n(to[1])}" r="${weight === 'anatomy' ? 1.6 : 2.2}" fill="${ink}"/>`
}

function labelSvg({ theme, layout }: Sheet, label: PlacedLabel): string {
  const ink = inks[theme]
  return label.lines
    .map(({ text, x, y, strong }) => {
      const size = Math.round((label.box.height / label.lines.length / 1.25) * 10) / 10
      const font = layout.texts.includes(label) || !layout.labels.includes(label) ? size : layout.font
      const colour = label.weight === 'anatomy' ? ink.ink : ink.accent
      return `<text x="${n(x)}" y="${n(y)}" font-size="${n(Math.round(font))}" text-anchor="${label.anchor}" fill="${colour}"${strong ? ' font-weight="600"' : ''}>${escaped(text)}</text>`
    })
    .join('')
}

function footSvg(sheet: Sheet): string[] {
  const { layout, theme } = sheet
  const ink = inks[theme]
  const bar = layout.scaleBar
  const [a, b]: (Point | undefined)[] = bar ? [bar.from, bar.to] : []
  const scale =
    a && b
      ? `<path d="M${n(a[0])} ${n(a[1] - 4)}V${n(a[1] + 4)}M${n(a[0])} ${n(a[1])}H${n(b[0])}M${n(b[0])} ${n(b[1] - 4)}V${n(b[1] + 4)}" stroke="${ink.ink}" stroke-width="1.2" fill="none"/>`
      : ''
  return [scale, ...layout.key.map((row) => keySvg(sheet, row))]
}

function keySvg(sheet: Sheet, { sample, role }: Layout['key'][number]): string {
  const middle = sample.y + sample.height / 2
  const d = `M${n(sample.x + 2)} ${n(middle)}H${n(sample.x + sample.width - 2)}`
  if (role in lines && !isHatch(role as FillRole))
    return `<g fill="none" stroke-linecap="round">${strokeSvg(sheet, d, role as StrokeRole)}</g>`
  if (role === 'unknown') return `<g fill="none" stroke-linecap="round">${strokeSvg(sheet, d, 'unknown')}</g>`
  return `<rect x="${n(sample.x + 1)}" y="${n(sample.y)}" width="${n(sample.width - 2)}" height="${n(sample.height)}" fill="${fillOf(sheet, role as FillRole)}" stroke="${inks[sheet.theme].ink}" stroke-width="0.7"/>`
}

/** Each hatch has its own figure: waves, dots, crosses, slanted lines one way or the other, sparse dots. */
function pattern({ prefix, theme, line }: Sheet, hatch: Hatch): string {
  const ink = inks[theme]
  const s = 8 * Math.max(line, 0.7)
  const stroke = (d: string, colour: string, width: number) =>
    `<path d="${d}" stroke="${colour}" stroke-width="${n(width)}" fill="none"/>`
  const dot = (x: number, y: number, r: number, colour: string) =>
    `<circle cx="${n(x * s)}" cy="${n(y * s)}" r="${n(r * Math.max(line, 0.7))}" fill="${colour}"/>`
  const body = () => {
    switch (hatch) {
      case 'filled':
        return stroke(
          `M0 ${n(s * 0.5)}C${n(s * 0.25)} ${n(s * 0.2)} ${n(s * 0.25)} ${n(s * 0.2)} ${n(s * 0.5)} ${n(s * 0.5)}S${n(s * 0.75)} ${n(s * 0.8)} ${n(s)} ${n(s * 0.5)}`,
          ink.accent,
          1,
        )
      case 'mineral':
        return (
          dot(0.2, 0.25, 1.1, ink.ink) +
          dot(0.7, 0.2, 0.8, ink.ink) +
          dot(0.45, 0.6, 1.2, ink.ink) +
          dot(0.9, 0.75, 0.9, ink.ink) +
          dot(0.1, 0.85, 0.9, ink.ink)
        )
      case 'mass':
        return stroke(
          `M${n(s * 0.3)} ${n(s * 0.5)}H${n(s * 0.7)}M${n(s * 0.5)} ${n(s * 0.3)}V${n(s * 0.7)}`,
          ink.accent,
          1.1,
        )
      case 'opened':
        return stroke(`M0 ${n(s)}L${n(s)} 0`, ink.accent, 1.3)
      case 'leave-alone':
        return stroke(`M0 0L${n(s)} ${n(s)}M0 ${n(s)}L${n(s)} 0`, ink.quiet, 0.6)
      case 'unknown':
        return dot(0.5, 0.5, 0.6, ink.quiet)
      default:
        return never(hatch)
    }
  }
  const ground =
    hatch === 'mineral'
      ? ink.cartilage
      : hatch === 'leave-alone' || hatch === 'opened'
        ? 'none'
        : hatch === 'unknown'
          ? ink.tissue
          : ink.paper
  const rect = ground === 'none' ? '' : `<rect width="${n(s)}" height="${n(s)}" fill="${ground}"/>`
  return `<pattern id="${prefix}-${hatch}" width="${n(s)}" height="${n(s)}" patternUnits="userSpaceOnUse">${rect}${body()}</pattern>`
}
