import { countUnitNames, ownOutcomeNames } from '#content/wording/own-figures.ts'
import { yearlyReportWords as words } from '#content/wording/yearly-report.ts'
import { fill } from '#core/outcome/finding.ts'
import type { YearlyOperation, YearlyReport, YearlyTracts, YearlyWatch } from '#core/yearly/report-of.ts'
import { type Block, heading, paragraph } from '../render/model.ts'
import { drawCurve, drawLine } from './draw-lines.ts'
import { hundred, ofHundred } from './say-rates.ts'

/** A table that would fill more than two pages is printed in steps; the JSON has every line. */
const mostRows = 60

/** Late tracts of one operation: sentences, the curve, its table. */
export function tractBlocks(tracts: YearlyTracts | null): Block[] {
  const own = words.tracts
  if (!tracts) return [heading(2, own.title), paragraph(own.none)]
  const said = sayTracts(tracts)
  const curve = drawCurve(tracts.steps, { alt: said.join(' '), caption: own.chart })
  return [
    heading(2, own.title),
    ...said.map(paragraph),
    ...(curve ? [curve] : []),
    ...(tracts.steps.length > 0 ? [stepsTable(tracts.steps)] : []),
  ]
}

function sayTracts({ ears, events, died, at, mean }: YearlyTracts): string[] {
  const own = words.tracts
  const after = at.flatMap((one) => {
    const when = { months: String(one.months), followed: String(one.followed) }
    if (one.kind === 'too-few') return [fill(one.followed === 0 ? own.notYet : own.tooFew, when)]
    if (one.interval === null) return [fill(own.atNone, { ...when, upTo: hundred([0, one.upTo ?? 1]).high })]
    const said = fill(own.at, { ...when, share: ofHundred(one.share), ...hundred(one.interval) })
    const wrong = died > 0 && ofHundred(one.withoutDeaths) !== ofHundred(one.share)
    return wrong ? [said, fill(own.wrong, { share: ofHundred(one.withoutDeaths) })] : [said]
  })
  const average = mean && {
    months: String(mean.months),
    days: String(Math.round(mean.days)),
    error: mean.error.toFixed(1),
  }
  return [
    fill(own.counted, { ears: String(ears), events: String(events), died: String(died) }),
    ...after,
    ...(average ? [fill(own.mean, average)] : []),
  ]
}

function stepsTable(steps: YearlyTracts['steps']): Block {
  const { columns, table, tableThinned, tooFewCell, noneCell } = words.tracts
  const step = Math.ceil(steps.length / mostRows)
  return {
    kind: 'table',
    caption: step === 1 ? table : fill(tableThinned, { step: String(step) }),
    rowHeader: false,
    columns: Object.values(columns).map((head) => ({ head, align: 'right' })),
    rows: thinned(steps, step).map(({ day, followed, events, died, share, interval }) => [
      String(day),
      String(followed),
      String(events),
      String(died),
      share === null ? tooFewCell : share === 0 ? noneCell : tenth(share),
      interval === null ? '–' : `${tenth(interval[0])}–${tenth(interval[1])}`,
    ]),
  }
}

/** The blink of one operation, in sentences. */
export function blinkBlocks(blink: YearlyOperation['blink'], enough: number): Block[] {
  const own = words.blink
  const title = heading(2, own.title)
  if (!blink) return [title, paragraph(own.none)]
  const { value, low, high } = blink.half
  const counted = fill(own.counted, { ears: String(blink.ears), back: String(blink.back) })
  if (blink.ears < enough) return [title, paragraph(`${counted} ${fill(own.tooFew, { enough: String(enough) })}`)]
  if (value === null) return [title, paragraph(`${counted} ${own.halfNotReached}`)]
  const ends = { low: String(low), high: String(high) }
  const range = low === null ? '' : fill(high === null ? own.rangeOpen : own.range, ends)
  return [title, paragraph(`${counted} ${fill(own.half, { day: String(Math.round(value)), range })}`)]
}

/** What is watched of one operation: a sentence for each, and a line with its table where enough are known. */
export function watchBlocks(watched: readonly YearlyWatch[], watch: YearlyReport['watch']): Block[] {
  const own = words.watch
  return [
    heading(2, own.title),
    paragraph(own.lead),
    ...watched.flatMap((one): Block[] => {
      const said = sayWatch(one, watch)
      if (one.kind !== 'watched') return [paragraph(said)]
      const about = aboutOf(one, watch)
      return [
        paragraph(said),
        drawLine(one.line, Number(watch.limit), { alt: said, caption: fill(own.chart, about) }),
        paragraph(
          fill(own.design, {
            ratio: watch.ratio,
            ahead: String(watch.ahead),
            false: String(Math.ceil(100 * one.falseAlarm)),
            right: String(Math.floor(100 * one.rightAlarm)),
          }),
        ),
        lineTable(one, about.outcome),
      ]
    }),
  ]
}

function aboutOf({ outcome, unit, known }: YearlyWatch, { least, limit }: YearlyReport['watch']) {
  const named = { outcome: ownOutcomeNames[outcome], unit: countUnitNames[unit] }
  return { ...named, known: String(known), least: String(least), limit }
}

function sayWatch(one: YearlyWatch, watch: YearlyReport['watch']): string {
  const own = words.watch
  const about = aboutOf(one, watch)
  switch (one.kind) {
    case 'too-few':
      return fill(own.tooFew, about)
    case 'nothing-expected':
      return fill(own.nothing, about)
    case 'watched': {
      const [place] = one.signals
      return fill(place === undefined ? own.calm : own.signal, {
        ...about,
        events: String(one.events),
        risk: ofHundred(one.risk),
        value: (one.line.at(-1) ?? 0).toFixed(2),
        place: String(place),
      })
    }
  }
}

function lineTable({ line, signals }: Extract<YearlyWatch, { kind: 'watched' }>, outcome: string): Block {
  const { columns, table, tableThinned, yes, no } = words.watch
  const step = Math.ceil(line.length / mostRows)
  const signalled = new Set(signals)
  return {
    kind: 'table',
    caption: fill(step === 1 ? table : tableThinned, { outcome, step: String(step) }),
    rowHeader: false,
    columns: Object.values(columns).map((head) => ({ head, align: 'right' })),
    rows: thinned(
      line.map((value, place) => [String(place + 1), value.toFixed(2), signalled.has(place + 1) ? yes : no]),
      step,
    ),
  }
}

/** Every so many lines, and the last. */
function thinned<Row>(rows: readonly Row[], step: number): Row[] {
  return rows.filter((_, place) => (place + 1) % step === 0 || place === rows.length - 1)
}

function tenth(share: number): string {
  return (100 * share).toFixed(1)
}
