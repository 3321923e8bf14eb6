import { fill } from '#core/outcome/finding.ts'
import { node, type SvgNode } from '#core/plate/svg-node.ts'
import { textWidth } from '#core/plate/text-width.ts'
import type { Period } from '#core/time/calendar-day.ts'
import { axisEnd, type CourseScale, type CourseTick, isGap, placeAt, ticksOf } from './course-scale.ts'
import { letters, markOf, n, stroke } from './draw-marks.ts'
import type { NerveCourse } from './nerve-course.ts'
import { type NerveSign, stepsOf } from './nerve-sign.ts'
import { isGraded, type SignCourse, type SignPoint } from './sign-course.ts'

export type CourseLook = {
  readonly width: number
  readonly font: number
  readonly colours: { readonly ink: string; readonly quiet: string; readonly accent: string }
  /** The end of the axis: now, or the day of death. */
  readonly until: string
  /** Nobody looked for longer than this: a gap. */
  readonly every: Period
  readonly words: {
    readonly signs: Readonly<Record<NerveSign, string>>
    readonly steps: Readonly<Record<NerveSign, readonly string[]>>
    readonly before: string
    readonly cut: string
    readonly lasting: string
    readonly ticks: Readonly<Record<'days' | 'weeks' | 'months' | 'year' | 'years', string>>
  }
  /** Tells two hatchings of one page apart. */
  readonly id: string
}

export type DrawnCourse = { readonly width: number; readonly height: number; readonly nodes: readonly SvgNode[] }

type Frame = { readonly look: CourseLook; readonly scale: CourseScale; readonly course: NerveCourse }

/**
 * The course of one ear as a drawing: a row for every sign that was looked at or was there before, a mark for every look,
 * joined only where looks follow each other, grey where nobody looked, hatched while a block may act.
 *
 * @example drawCourse(course, { width: 560, font: 12, colours, until: now, every: { count: 1, unit: 'months' }, … })?.height
 */
export function drawCourse(course: NerveCourse, look: CourseLook): DrawnCourse | null {
  const rows = course.signs.filter(({ points }) => points.length > 0)
  if (rows.length === 0) return null
  const { font, width, words } = look
  const longest = Math.max(...rows.flatMap(({ sign }) => words.steps[sign].map((word) => textWidth(word, font))))
  const before = textWidth(words.before, font) + font
  const left = Math.min(longest, width * 0.34) + font * 0.6 + before
  const from = course.operation.moment.at
  const ends = [look.until, ...course.looks.map(({ at }) => at)]
  const scale = { from, until: axisEnd(from, ends), left, width: width - left - font }
  const frame: Frame = { look, scale, course }
  let y = font * 2.2
  const top = y
  const drawn = rows.map((row) => {
    const made = drawRow(row, y, frame, before)
    y += heightOf(row.sign, font)
    return made
  })
  return {
    width,
    height: Math.ceil(y + font * 1.8),
    nodes: [hatching(look), ...blockBands(frame, top, y), ...axis(frame, top, y, before), ...drawn.flat()],
  }
}

const stepHeight = 1.35

function heightOf(sign: NerveSign, font: number): number {
  return font * (1.5 + (stepsOf[sign] - 1) * stepHeight + 1.7)
}

function drawRow(row: SignCourse, y: number, { look, scale, course }: Frame, before: number): SvgNode[] {
  const { font, colours, words } = look
  const yOf = (step: number) => y + font * (2 + step * stepHeight)
  const steps = words.steps[row.sign]
  const [first, last] = [yOf(0), yOf(stepsOf[row.sign] - 1)]
  const was = row.before.kind === 'known' ? row.before.reading.step : null
  const counted = row.points.filter(isGraded)
  return [
    letters(words.signs[row.sign], { x: 0, y: y + font, anchor: 'start', colour: colours.ink, bold: true }, look),
    ...steps.flatMap((word, step) => [
      letters(word, { x: 0, y: yOf(step) + font * 0.35, anchor: 'start', colour: colours.quiet }, look),
      stroke([scale.left - before, yOf(step)], [scale.left + scale.width, yOf(step)], colours.quiet, {
        'stroke-width': '0.5',
        'stroke-opacity': '0.5',
      }),
    ]),
    ...gapsOf(counted, course, look).map(([a, b]) => gapBand(a, b, [first, last], { look, scale, course })),
    ...(was === null
      ? []
      : [markOf('normal', scale.left - before / 2, yOf(was), look, was === 0 ? colours.ink : colours.accent)]),
    ...joins(counted, look).map(([a, b]) => joined(a, b, yOf, { look, scale, course })),
    ...row.points.map((point) => {
      const colour = point.reading.step === 0 ? colours.ink : colours.accent
      // An eye that blinked, nobody said how well, stands between normal and weak.
      return markOf(point.change, placeAt(point.look.at, scale), yOf(point.reading.step ?? 0.5), look, colour)
    }),
  ]
}

/** From the operation over every examination to the end of what is shown: where nobody looked for too long. */
function gapsOf(counted: readonly SignPoint[], course: NerveCourse, { every, until }: CourseLook) {
  const times = [course.operation.moment.at, ...counted.map(({ look }) => look.at), until]
  return times.flatMap((at, index): [string, string][] => {
    const next = times[index + 1]
    return next !== undefined && isGap(at, next, every.count) ? [[at, next]] : []
  })
}

function gapBand(
  from: string,
  until: string,
  [first, last]: readonly [number, number],
  { look, scale }: Frame,
): SvgNode {
  const [a, b] = [placeAt(from, scale), placeAt(until, scale)]
  const inset = look.font * 0.5
  return node('rect', {
    x: n(a + inset),
    y: n(first - inset),
    width: n(Math.max(1, b - a - 2 * inset)),
    height: n(last - first + 2 * inset),
    fill: look.colours.quiet,
    'fill-opacity': '0.18',
  })
}

function joins(counted: readonly SignPoint[], { every }: CourseLook): [SignPoint, SignPoint][] {
  return counted.flatMap((point, index): [SignPoint, SignPoint][] => {
    const next = counted[index + 1]
    return next && !isGap(point.look.at, next.look.at, every.count) ? [[point, next]] : []
  })
}

function joined(a: SignPoint, b: SignPoint, yOf: (step: number) => number, { look, scale }: Frame): SvgNode {
  const [from, until] = [a.reading.step ?? 0, b.reading.step ?? 0]
  const dash = from === until ? {} : { 'stroke-dasharray': '4 3' }
  return stroke(
    [placeAt(a.look.at, scale), yOf(from)],
    [placeAt(b.look.at, scale), yOf(until)],
    from === 0 && until === 0 ? look.colours.ink : look.colours.accent,
    { 'stroke-width': '2', ...dash },
  )
}

function hatching({ id, colours }: CourseLook): SvgNode {
  const line = stroke([0, 0], [0, 6], colours.quiet, { 'stroke-width': '1.5' })
  const about = { id, width: '6', height: '6', patternUnits: 'userSpaceOnUse', patternTransform: 'rotate(45)' }
  return node('defs', {}, [node('pattern', about, [line])])
}

function blockBands({ look, scale, course }: Frame, top: number, bottom: number): SvgNode[] {
  return course.blocks.map(({ from, until }) => {
    const [a, b] = [placeAt(from, scale), placeAt(until, scale)]
    return node('rect', {
      x: n(a),
      y: n(top),
      width: n(Math.max(1, b - a)),
      height: n(bottom - top),
      fill: `url(#${look.id})`,
      'fill-opacity': '0.35',
    })
  })
}

/** The cut, days and months below, the day from which a deficit is lasting where the axis reaches it. */
function axis({ look, scale, course }: Frame, top: number, bottom: number, before: number): SvgNode[] {
  const { font, colours, words } = look
  const lasts = `${course.lastsFrom}T00:00:00.000Z`
  const shown = lasts < scale.until
  const upright = (x: number, dash: string | null) =>
    stroke([x, top - font * 0.6], [x, bottom], colours.ink, { 'stroke-width': '1', 'stroke-dasharray': dash })
  const beside = { y: font, colour: colours.quiet }
  const lastingAt = placeAt(lasts, scale)
  return [
    letters(words.before, { ...beside, x: scale.left - before / 2, anchor: 'middle' }, look),
    letters(words.cut, { ...beside, x: scale.left, anchor: 'start' }, look),
    upright(scale.left, null),
    ...(shown
      ? [upright(lastingAt, '2 3'), letters(words.lasting, { ...beside, x: lastingAt, anchor: 'end' }, look)]
      : []),
    ...placed(ticksOf(scale), { look, scale, course }).map(({ x, word }) =>
      letters(word, { x, y: bottom + font * 1.2, anchor: 'middle', colour: colours.quiet }, look),
    ),
  ]
}

/** From the far end inwards, each where it does not touch the one after it. */
function placed(ticks: readonly CourseTick[], { look, scale }: Frame): { x: number; word: string }[] {
  let free = look.width
  return [...ticks].reverse().flatMap((tick) => {
    const word = sayTick(tick, look.words.ticks)
    const x = placeAt(tick.at, scale)
    const half = textWidth(word, look.font) / 2
    if (x + half > free || x - half < scale.left - look.font * 2) return []
    free = x - half - look.font * 0.6
    return [{ x, word }]
  })
}

function sayTick({ unit, count }: CourseTick, words: CourseLook['words']['ticks']): string {
  if (unit === 'months' && count === 12) return words.year
  if (unit === 'months' && count > 12) return fill(words.years, { n: String(count / 12) })
  if (unit === 'weeks' && count === 1) return fill(words.days, { n: '7' })
  return fill(words[unit], { n: String(count) })
}
