import { node, type SvgNode } from '#core/plate/svg-node.ts'
import { textWidth } from '#core/plate/text-width.ts'
import { clockOf } from '#core/time/moment.ts'
import { plain } from '#core/units/quantity.ts'
import type { Gap } from './ledger.ts'
import { axisTimes, placeOf, type Scale } from './strip-times.ts'
import type { Strip, StripPoint } from './strips.ts'

/** What happened, as a tick through every strip with its word, or only as a tick on the axis (`word` null). */
export type StripEvent = { readonly at: string; readonly word: string | null }

export type StripLook = {
  readonly width: number
  /** Pixels of the letters. */
  readonly font: number
  readonly colours: { readonly ink: string; readonly quiet: string; readonly accent: string }
  readonly zone: string
  readonly nameOf: (strip: Strip) => string
}

export type DrawnStrips = { readonly width: number; readonly height: number; readonly nodes: readonly SvgNode[] }

type Ticks = { readonly times: readonly string[]; readonly events: readonly StripEvent[] }

/** Strips under each other on one axis of time, with the words of events above and clock times below. */
type Frame = {
  readonly look: StripLook
  readonly scale: Scale
  /** Where the words of events end and the first strip begins. */
  readonly top: number
  readonly rowHeight: number
  readonly plotHeight: number
}

/**
 * The strips of an anaesthetic as a drawing: a dot for every value, joined only within a run; an artefact is an open
 * ring; a gap is an empty band. Null where nothing was measured.
 *
 * @example drawStrips(strips, gaps, events, { width: 540, font: 11, colours, zone, nameOf })?.height
 */
export function drawStrips(
  strips: readonly Strip[],
  gaps: readonly Gap[],
  events: readonly StripEvent[],
  look: StripLook,
): DrawnStrips | null {
  const scale = scaleOf(strips, gaps, events, look)
  if (!scale) return null
  const named = placeWords(events, scale, look)
  const line = look.font * 1.4
  const frame: Frame = {
    look,
    scale,
    top: named.lines * line + look.font,
    rowHeight: line + look.font * 5,
    plotHeight: look.font * 3.4,
  }
  const bottom = frame.top + strips.length * frame.rowHeight
  const most = Math.max(2, Math.floor(scale.width / (look.font * 4.5)))
  const ticks: Ticks = {
    times: axisTimes(scale.from, scale.until, most),
    events: events.filter(({ at }) => at >= scale.from && at <= scale.until),
  }
  return {
    width: look.width,
    height: Math.ceil(bottom + line + look.font * 0.5),
    nodes: [
      ...gaps.map((gap) => gapBand(gap, frame, bottom)),
      ...axisWords(frame, ticks.times, bottom),
      ...named.words.map(({ word, x, line: at, anchor }) =>
        letters(word, { x, y: look.font + at * line, anchor, colour: look.colours.ink }, look),
      ),
      ...strips.flatMap((strip, index) => stripNodes(strip, frame.top + index * frame.rowHeight, { frame, ticks })),
    ],
  }
}

/** From the first to the last thing that is drawn; a moment alone stands in the middle. */
function scaleOf(
  strips: readonly Strip[],
  gaps: readonly Gap[],
  events: readonly StripEvent[],
  { width, font }: StripLook,
): Scale | null {
  const measured = strips.flatMap(({ points }) => points.map(({ at }) => at))
  if (measured.length === 0) return null
  const named = events.filter(({ word }) => word !== null).map(({ at }) => at)
  const all = [
    ...measured,
    ...named,
    ...gaps.flatMap(({ at, until }) => [at, ...(until === null ? [] : [until])]),
  ].sort()
  const left = font * 3.4
  return { from: all[0] ?? '', until: all.at(-1) ?? '', left, width: width - left - font }
}

/** Words of events from left to right, each on the first line where it does not touch the one before. */
function placeWords(events: readonly StripEvent[], scale: Scale, { font, width }: StripLook) {
  const ends: number[] = []
  const words = events
    .flatMap(({ at, word }) => (word === null ? [] : [{ at, word }]))
    .sort((a, b) => (a.at < b.at ? -1 : 1))
    .map(({ at, word }) => {
      const long = textWidth(word, font)
      const place = placeOf(at, scale)
      const fits = place + long < width
      const [from, until] = fits ? [place, place + long] : [place - long, place]
      const free = ends.findIndex((end) => end + font * 0.6 < from)
      const line = free === -1 ? ends.length : free
      ends[line] = until
      return { word, x: place, line, anchor: fits ? ('start' as const) : ('end' as const) }
    })
  return { words, lines: ends.length }
}

function gapBand({ at, until }: Gap, { scale, top, look }: Frame, bottom: number): SvgNode {
  const from = placeOf(at, scale)
  const end = until === null ? scale.left + scale.width : placeOf(until, scale)
  return node('rect', {
    x: n(from),
    y: n(top),
    width: n(Math.max(1, end - from)),
    height: n(bottom - top),
    fill: look.colours.quiet,
    'fill-opacity': '0.2',
  })
}

/** Clock times below everything. */
function axisWords({ scale, look }: Frame, times: readonly string[], bottom: number): SvgNode[] {
  const { colours, font, zone } = look
  return times.map((at) =>
    letters(
      clockOf(at, zone),
      { x: placeOf(at, scale), y: bottom + font * 1.3, anchor: 'middle', colour: colours.quiet },
      look,
    ),
  )
}

/** Times and events through one strip, never through its words; a step or a drug is a short tick on its floor. */
function ticksOf(frame: Frame, ticks: Ticks, floor: number): SvgNode[] {
  const { scale, look, plotHeight } = frame
  const { quiet, ink } = look.colours
  const ceiling = floor - plotHeight
  return [
    ...ticks.times.map((at) => {
      const x = placeOf(at, scale)
      return line([x, ceiling], [x, floor], quiet, { 'stroke-width': '0.5', 'stroke-dasharray': '1 3' })
    }),
    ...ticks.events.map(({ at, word }) => {
      const x = placeOf(at, scale)
      const from = word === null ? floor - look.font * 0.5 : ceiling
      return line([x, from], [x, floor], word === null ? quiet : ink, { 'stroke-width': '0.8' })
    }),
  ]
}

function stripNodes(strip: Strip, y: number, around: { readonly frame: Frame; readonly ticks: Ticks }): SvgNode[] {
  const { scale, look, plotHeight } = around.frame
  const { colours, font } = look
  const head = y + font * 1.5
  const floor = head + font * 0.8 + plotHeight
  const same = strip.lowest.eq(strip.highest)
  const ceiling = floor - plotHeight
  const placeY = ({ value }: StripPoint) => {
    // An artefact beyond the true values stands at the edge: it must not flatten them.
    if (value.gt(strip.highest)) return ceiling - font * 0.4
    if (value.lt(strip.lowest)) return floor + font * 0.4
    if (same) return floor - plotHeight / 2
    return floor - value.minus(strip.lowest).div(strip.highest.minus(strip.lowest)).times(plotHeight).toNumber()
  }
  const at = (point: StripPoint) => [placeOf(point.at, scale), placeY(point)] as const
  const limits = same ? [strip.highest] : [strip.highest, strip.lowest]
  return [
    ...ticksOf(around.frame, around.ticks, floor),
    letters(look.nameOf(strip), { x: 0, y: head, anchor: 'start', colour: colours.ink, bold: true }, look),
    ...limits.map((value, index) => {
      const level = same ? floor - plotHeight / 2 : index === 0 ? ceiling : floor
      const place = {
        x: scale.left - font * 0.7,
        y: level + font * 0.35,
        anchor: 'end' as const,
        colour: colours.quiet,
      }
      return letters(plain(value), place, look)
    }),
    ...strip.runs
      .filter((run) => run.length > 1)
      .map((run) =>
        node('polyline', {
          points: run.map((point) => at(point).map(n).join(',')).join(' '),
          fill: 'none',
          stroke: colours.accent,
          'stroke-width': n(font / 6),
          'stroke-linejoin': 'round',
        }),
      ),
    ...strip.points.map((point) => {
      const [x, yOf] = at(point)
      return node('circle', {
        cx: n(x),
        cy: n(yOf),
        r: n(point.artefact ? font * 0.34 : font * 0.26),
        fill: point.artefact ? 'none' : colours.accent,
        stroke: point.artefact ? colours.ink : null,
        'stroke-width': point.artefact ? n(font / 9) : null,
      })
    }),
  ]
}

function line(
  [x1, y1]: readonly [number, number],
  [x2, y2]: readonly [number, number],
  stroke: string,
  more: Readonly<Record<string, string>>,
): SvgNode {
  return node('line', { x1: n(x1), y1: n(y1), x2: n(x2), y2: n(y2), stroke, ...more })
}

function letters(
  word: string,
  place: {
    readonly x: number
    readonly y: number
    readonly anchor: 'start' | 'middle' | 'end'
    readonly colour: string
    readonly bold?: true
  },
  { font }: StripLook,
): SvgNode {
  const { x, y, anchor, colour, bold } = place
  return node(
    'text',
    {
      x: n(x),
      y: n(y),
      'font-size': n(font),
      'text-anchor': anchor,
      fill: colour,
      'font-weight': bold ? '600' : null,
    },
    [word],
  )
}

/** Tenths of a pixel are enough for an eye. */
function n(value: number): string {
  return String(Math.round(value * 10) / 10)
}
