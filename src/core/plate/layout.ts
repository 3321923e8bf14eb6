import type { Point } from './geometry.ts'
import { round } from './geometry.ts'
import type { Box, Scene, SceneLabel } from './scene.ts'
import { textWidth, wrapped } from './text-width.ts'

export type TextLine = {
  readonly text: string
  readonly x: number
  readonly y: number
  readonly strong: boolean
  /** What is known of a part, under its name. */
  readonly state?: boolean
}
export type PlacedLabel = {
  readonly structure: SceneLabel['structure']
  readonly weight: SceneLabel['weight']
  readonly box: Box
  readonly lines: readonly TextLine[]
  readonly anchor: 'start' | 'end' | 'middle'
  /** From the label to its point on the drawing; empty for a word that needs none. */
  readonly leader: readonly Point[]
}
export type KeyRow = {
  readonly sample: Box
  readonly role: Scene['key'][number]['sample']
  readonly label: PlacedLabel
}

/** A sheet of a certain width in pixels: where the drawing stands and where every word stands. */
export type Layout = {
  readonly width: number
  readonly height: number
  readonly font: number
  readonly drawing: Box & { readonly scale: number }
  readonly numbered: boolean
  readonly labels: readonly PlacedLabel[]
  /** Title, directions, list of numbers, key and notes. */
  readonly texts: readonly PlacedLabel[]
  readonly key: readonly KeyRow[]
  readonly scaleBar: { readonly from: Point; readonly to: Point } | null
}

const rank = { finding: 0, surgery: 1, anatomy: 2 } as const
const gap = 5

/**
 * Places every word of a scene on a sheet. Words stand in one column on each side of the drawing, never on it; under
 * 620 px the columns hold numbers and the words follow as a list. Same scene and width, same places.
 *
 * @example layoutPlate(scene, { width: 768, pixelLabels: 13 })
 * Reference: boundary labelling with straight leaders, Bekos and others, 2007: neighbours are exchanged until no two
 * leaders of a side cross.
 */
export function layoutPlate(scene: Scene, { width, pixelLabels }: { width: number; pixelLabels?: number }): Layout {
  const font = pixelLabels ?? (width >= 1100 ? 15 : width >= 620 ? 13 : 12)
  const numbered = width < 48 * font
  const column = numbered ? Math.ceil(font * 1.9) : Math.round(Math.min(width * 0.215, font * 15))
  const head = heading(scene, width, font)
  const drawn = width - 2 * (column + 10)
  const scale = drawn / scene.frame.width
  const texts = [...scene.labels].map((label, index) => ({ label, index }))
  const ordered = numbered
    ? texts.sort((a, b) => rank[a.label.weight] - rank[b.label.weight] || a.index - b.index)
    : texts
  const wanted = ordered.map(({ label }, index) => sized(label, numbered ? String(index + 1) : null, column, font))
  const top = head.bottom + 6
  const sides = split(wanted, scene.frame.x + scene.frame.width / 2)
  const need = Math.max(...sides.map((side) => side.reduce((sum, item) => sum + item.height + gap, 0)))
  const height = Math.max(scene.frame.height * scale, need)
  const drawing = {
    x: column + 10,
    y: top + (height - scene.frame.height * scale) / 2,
    width: drawn,
    height: scene.frame.height * scale,
    scale,
  }
  const toSheet = ([x, y]: Point): Point => [
    drawing.x + (x - scene.frame.x) * scale,
    drawing.y + (y - scene.frame.y) * scale,
  ]
  const labels = sides.flatMap((side, index) => {
    const edge = index === 0 ? column + 4 : width - column - 4
    const aimed = side.map((item) => ({ ...item, at: toSheet(item.label.at) }))
    const placed = uncrossed(aimed, edge, top, top + height)
    return placed.map((item) => place(item, index === 0 ? 'left' : 'right', column, width, font))
  })
  const foot = footer(scene, {
    width,
    font,
    top: top + height + 8,
    drawing,
    numbered: numbered ? ordered.map(({ label }) => label) : [],
  })
  return {
    width,
    height: Math.ceil(foot.bottom),
    font,
    drawing,
    numbered,
    labels,
    texts: [...head.texts, ...foot.texts],
    key: foot.key,
    scaleBar: foot.scaleBar,
  }
}

type Wanted = {
  readonly label: SceneLabel
  readonly lines: readonly { text: string; strong: boolean; state?: boolean }[]
  readonly height: number
  readonly width: number
}
type Aimed = Wanted & { readonly at: Point }
type Spread = Aimed & { readonly y: number }

function sized(label: SceneLabel, number: string | null, column: number, font: number): Wanted {
  const name = number
    ? [{ text: number, strong: label.weight !== 'anatomy' }]
    : wrapped(label.text, column, font, label.weight !== 'anatomy').map((text) => ({
        text,
        strong: label.weight !== 'anatomy',
        state: false,
      }))
  const state =
    number || label.state === null
      ? []
      : wrapped(label.state, column, font).map((text) => ({ text, strong: false, state: true }))
  const lines = [...name, ...state]
  const width = Math.min(column, Math.max(...lines.map(({ text, strong }) => textWidth(text, font, strong))))
  return { label, lines, height: lines.length * lineHeight(font), width }
}

function lineHeight(font: number): number {
  return Math.round(font * 1.25)
}

/** To the nearer side; the fuller side gives away what lies nearest to the middle until both fit alike. */
function split(items: readonly Wanted[], middle: number): readonly [Wanted[], Wanted[]] {
  const left = items.filter((item) => item.label.at[0] < middle)
  const right = items.filter((item) => item.label.at[0] >= middle)
  const room = (side: readonly Wanted[]) => side.reduce((sum, item) => sum + item.height + gap, 0)
  for (let step = 0; step < items.length; step += 1) {
    const [full, other] = room(left) > room(right) ? [left, right] : [right, left]
    const nearest = full.reduce<Wanted | null>(
      (best, item) =>
        !best || Math.abs(item.label.at[0] - middle) < Math.abs(best.label.at[0] - middle) ? item : best,
      null,
    )
    if (!nearest || room(full) - room(other) < 2 * (nearest.height + gap)) break
    full.splice(full.indexOf(nearest), 1)
    other.push(nearest)
  }
  return [left, right]
}

/** From top to bottom; two whose leaders would cross change places, until none do. */
function uncrossed(items: readonly Aimed[], edge: number, top: number, bottom: number): Spread[] {
  const order = [...items].sort((a, b) => a.at[1] - b.at[1] || a.at[0] - b.at[0])
  let placed = spread(order, top, bottom)
  for (let exchange = 0; exchange < order.length ** 2; exchange += 1) {
    const pair = crossing(placed, edge)
    if (!pair) break
    const [i, j] = pair
    const [a, b] = [order[i], order[j]]
    if (!a || !b) break
    order[i] = b
    order[j] = a
    placed = spread(order, top, bottom)
  }
  return placed
}

/** The nearest two of the column whose leaders cross. */
function crossing(placed: readonly Spread[], edge: number): readonly [number, number] | null {
  for (let apart = 1; apart < placed.length; apart += 1) {
    for (let i = 0; i + apart < placed.length; i += 1) {
      const [a, b] = [placed[i], placed[i + apart]]
      if (a && b && cross([edge, a.y + a.height / 2], a.at, [edge, b.y + b.height / 2], b.at)) return [i, i + apart]
    }
  }
  return null
}

export function cross(a: Point, b: Point, c: Point, d: Point): boolean {
  const turn = (p: Point, q: Point, r: Point) =>
    Math.sign((q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]))
  return turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0
}

/** Each as near to its point as the others allow: touching ones form a block that stands at its mean wish. */
function spread(order: readonly Aimed[], top: number, bottom: number): Spread[] {
  type Block = { wish: number; count: number; height: number; items: Aimed[] }
  const blocks: Block[] = []
  const topOf = (block: Block) =>
    Math.min(Math.max(block.wish / block.count, top), Math.max(bottom - block.height, top))
  for (const item of order) {
    blocks.push({ wish: item.at[1] - item.height / 2, count: 1, height: item.height, items: [item] })
    for (;;) {
      const [above, below] = [blocks.at(-2), blocks.at(-1)]
      if (!above || !below || topOf(above) + above.height + gap <= topOf(below)) break
      blocks.splice(-2, 2, {
        wish: above.wish + below.wish - below.count * (above.height + gap),
        count: above.count + below.count,
        height: above.height + gap + below.height,
        items: [...above.items, ...below.items],
      })
    }
  }
  return blocks.flatMap((block) => {
    let y = topOf(block)
    return block.items.map((item) => {
      const here = { ...item, y }
      y += item.height + gap
      return here
    })
  })
}

function place(item: Spread, side: 'left' | 'right', column: number, width: number, font: number): PlacedLabel {
  const edge = side === 'left' ? column : width - column
  const x = side === 'left' ? edge - item.width : edge
  const y = round(item.y)
  const step = lineHeight(font)
  const out = side === 'left' ? edge + 4 : edge - 4
  return {
    structure: item.label.structure,
    weight: item.label.weight,
    box: { x: round(x), y, width: round(item.width), height: item.height },
    anchor: side === 'left' ? 'end' : 'start',
    lines: item.lines.map((line, index) => ({ ...line, x: edge, y: round(y + step * index + font) })),
    leader: [
      [round(out), round(y + item.height / 2)],
      [round(item.at[0]), round(item.at[1])],
    ],
  }
}

function plain(
  text: string,
  x: number,
  y: number,
  font: number,
  more: Partial<PlacedLabel> & { strong?: boolean } = {},
): PlacedLabel {
  const { strong = false, anchor = 'start', ...rest } = more
  const width = textWidth(text, font, strong)
  const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2
  return {
    structure: 'flap',
    weight: 'anatomy',
    box: { x: round(left), y: round(y), width: round(width), height: lineHeight(font) },
    lines: [{ text, x: round(x), y: round(y + font), strong }],
    anchor,
    leader: [],
    ...rest,
  }
}

function heading(scene: Scene, width: number, font: number) {
  const big = Math.round(font * 1.5)
  const title = plain(scene.title, width / 2, 4, big, { anchor: 'middle', strong: true })
  const under = wrapped(scene.subtitle, width - 16, font).map((text, index) =>
    plain(text, width / 2, 6 + lineHeight(big) + index * lineHeight(font), font, { anchor: 'middle' }),
  )
  return { texts: [title, ...under], bottom: 6 + lineHeight(big) + under.length * lineHeight(font) }
}

type FootWish = {
  width: number
  font: number
  top: number
  drawing: Box & { scale: number }
  numbered: readonly SceneLabel[]
}

function footer(scene: Scene, { width, font, top, drawing, numbered }: FootWish) {
  const small = font - 1
  const step = lineHeight(small)
  const texts: PlacedLabel[] = [
    plain(`← ${scene.leftward}`, drawing.x, top, small),
    plain(`${scene.rightward} →`, drawing.x + drawing.width, top, small, { anchor: 'end' }),
  ]
  let y = top + step + 6
  let scaleBar: Layout['scaleBar'] = null
  if (scene.scale) {
    const length = scene.scale.length * drawing.scale
    const from = width / 2 - (length + 6 + textWidth(scene.scale.text, small)) / 2
    scaleBar = { from: [round(from), round(y + step / 2)], to: [round(from + length), round(y + step / 2)] }
    texts.push(plain(scene.scale.text, from + length + 6, y, small))
    y += step + 6
  }
  numbered.forEach((label, index) => {
    const words = label.state === null ? label.text : `${label.text}: ${label.state}`
    const strong = label.weight !== 'anatomy'
    texts.push(plain(String(index + 1), 8 + font * 1.4, y, font, { anchor: 'end', strong }))
    for (const line of wrapped(words, width - 24 - font * 1.4, font, strong)) {
      texts.push(plain(line, 16 + font * 1.4, y, font, { strong }))
      y += lineHeight(font)
    }
  })
  if (numbered.length > 0) y += 8
  const key = keyRows(scene, width, small, y)
  y = key.bottom
  for (const note of scene.notes) {
    for (const line of wrapped(note, width - 16, small)) {
      texts.push(plain(line, 8, y, small))
      y += step
    }
  }
  return { texts, key: key.rows, scaleBar, bottom: y + 6 }
}

function keyRows(scene: Scene, width: number, font: number, top: number) {
  const step = lineHeight(font) + 4
  let x = 8
  let y = top
  const rows = scene.key.map(({ sample, text }): KeyRow => {
    const wide = 36 + textWidth(text, font) + 18
    if (x > 8 && x + wide > width - 4) {
      x = 8
      y += step
    }
    const row = {
      role: sample,
      sample: { x, y: round(y + 2), width: 30, height: font },
      label: plain(text, x + 36, y, font),
    }
    x = round(x + wide)
    return row
  })
  return { rows, bottom: rows.length === 0 ? top : y + step + 4 }
}
