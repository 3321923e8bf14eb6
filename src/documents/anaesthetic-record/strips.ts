import { ledgerInEnglish as words } from '#content/wording/ledger.ts'
import { anaestheticRecordWords as own } from '#content/wording/papers-anaesthetic.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import { node, svgText } from '#core/plate/svg-node.ts'
import { drawStrips, type StripEvent } from '#core/theatre/draw-strips.ts'
import type { Ledger } from '#core/theatre/ledger.ts'
import { type Strip, stripsOf } from '#core/theatre/strips.ts'
import { clockOf } from '#core/time/moment.ts'
import type { Quantity } from '#core/units/quantity.ts'
import { unitWord } from '#core/units/unit-words.ts'
import { type Block, paragraph } from '../render/model.ts'
import { sayStampName } from './say-row.ts'

/** "Mean pressure, mmHg". */
export function nameOfStrip({ what, unit }: Strip): string {
  return fill(words.stripName, { what: capital(words.names[what]), unit: unitWord(unit) })
}

/** What stands on the axis of time since anaesthesia began: marks and emergencies by name, steps and drugs as ticks. */
export function stripEvents({ rows, start, together }: Ledger): StripEvent[] {
  return rows.flatMap((row): StripEvent[] => {
    if (start !== null && row.at < start) return []
    if (row.kind === 'given') return [{ at: row.at, word: null }]
    if (row.kind !== 'stamp') return []
    return [{ at: row.at, word: row.weight === 'step' ? null : sayStampName(row.line, together) }]
  })
}

/** What the strips show, for whoever cannot see them. */
export function sayStrips(strips: readonly Strip[], zone: string): string {
  const times = strips.flatMap(({ points }) => points.map(({ at }) => at)).sort()
  return fill(words.stripsAlt, {
    names: strips.map(({ what }) => words.names[what]).join(', '),
    from: clockOf(times[0] ?? '', zone),
    until: clockOf(times.at(-1) ?? '', zone),
  })
}

/** Less than the printed column of an A4 page, in pixels of 1/96 inch; words of 8 pt. */
const onA4 = { width: 600, font: 10.5 } as const
const inPrint = { ink: '#1c2326', quiet: '#56626a', accent: '#1f5a66' } as const

/** The strips as a picture of a paper, complete in itself. */
export function stripBlocks(file: CaseFile, ledger: Ledger, every: Quantity<'min'>): Block[] {
  const { zone } = file.clinic
  const strips = stripsOf(ledger.observations, every)
  const look = { ...onA4, colours: inPrint, zone, nameOf: nameOfStrip }
  const drawn = drawStrips(strips, ledger.gaps, stripEvents(ledger), look)
  if (!drawn) return [paragraph(own.notDrawn)]
  const alt = sayStrips(strips, zone)
  const whole = node(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: String(drawn.width),
      height: String(drawn.height),
      viewBox: `0 0 ${drawn.width} ${drawn.height}`,
      role: 'img',
      'aria-label': alt,
      'font-family': "'Noto Sans', 'Liberation Sans', Arial, sans-serif",
    },
    drawn.nodes,
  )
  return [{ kind: 'picture', svg: `${svgText(whole)}\n`, alt, caption: words.stripsCaption }]
}
