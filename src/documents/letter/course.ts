import { findingWords, letterInEnglish as words } from '#content/wording/letter.ts'
import { papersInEnglish } from '#content/wording/papers.ts'
import { type HomeMedicine, stretchesOf } from '#core/home/medicine-times.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCalendarDay } from '#core/time/calendar-day.ts'
import { sayMoment } from '#core/time/moment.ts'
import { earOf, sayDay } from '../case/case-words.ts'
import { sayUnit } from '../case/say-quantity.ts'
import { type Block, list, paragraph } from '../render/model.ts'
import { sayCode } from './findings.ts'

/** Going home, every look since, late events and the status after a year, in the order of time. */
export function courseBlocks(file: CaseFile): Block[] {
  const checks = file.theCase.live('check')
  return [
    ...file.theCase.live('discharge').map((line) => paragraph(dischargeWords(line))),
    ...file.theCase.live('medicine-change').map((line) => paragraph(changeWords(line))),
    checks.length === 0 ? paragraph(words.noCourse) : checkTable(checks),
    ...later(file),
  ]
}

function sideOf(line: Pick<Line<unknown>, 'header'>): string {
  const side = earOf(line)
  return side ? papersInEnglish.sides[side] : papersInEnglish.notRecorded
}

function dischargeWords({ body, header }: Line<BodyOf<'discharge'>>): string {
  return fill(words.discharge, {
    date: sayDay(header.happenedAt),
    medicines: body.medicines.flatMap(stretchesOf).map(medicineWords).join('; ') || words.noMedicines,
    collar: sayCalendarDay(body.collarUntil),
    sutures: words.sutures[body.sutures],
  })
}

function medicineWords({ label, each, times, days, firstDay }: HomeMedicine): string {
  const about = { label, each, times: times.join(', '), days: String(days), first: sayCalendarDay(firstDay) }
  return fill(words.medicine, about)
}

function changeWords({ body, header }: Line<BodyOf<'medicine-change'>>): string {
  const stops = body.stops.map(({ label, fromDay, fromTime }) =>
    fill(words.stopped, { label, date: sayCalendarDay(fromDay), time: fromTime }),
  )
  return fill(words.changed, {
    date: sayDay(header.happenedAt),
    because: body.because,
    stops: stops.join('; ') || words.nothingStops,
    starts: body.starts.flatMap(stretchesOf).map(medicineWords).join('; ') || words.nothingStarts,
  })
}

function checkTable(checks: readonly Line<BodyOf<'check'>>[]): Block {
  const { date, side, by, wound, face, tears, text } = words.courseColumns
  return {
    kind: 'table',
    caption: words.courseCaption,
    rowHeader: true,
    columns: [
      { head: date, align: 'left', share: 1.7 },
      { head: side, align: 'left', share: 0.9 },
      { head: by, align: 'left', share: 1.2 },
      { head: wound, align: 'left', share: 1.1 },
      { head: face, align: 'left', share: 1.4 },
      { head: tears, align: 'left', share: 1.2 },
      { head: text, align: 'left', share: 2.6 },
    ],
    rows: checks.map((line) => [
      sayDay(line.header.happenedAt),
      sideOf(line),
      sayCode(line.body.seenBy),
      sayCode(line.body.wound),
      faceWords(line.body),
      line.body.tearTest === null ? sayCode('not-assessed') : sayUnit(line.body.tearTest),
      line.body.text ?? '',
    ]),
  }
}

/** The blink and every sign that is there. A missing blink under the block is not graded as a palsy. */
function faceWords(check: BodyOf<'check'>): string {
  const signs = (['lipOrEarDroop', 'horner', 'headTilt', 'nystagmus', 'unsteady', 'painful'] as const)
    .filter((sign) => check[sign] === 'yes')
    .map((sign) => findingWords.seenSigns[sign])
  const others = [
    ...(check.nostril === 'dry' ? [findingWords.seenSigns.nostril] : []),
    ...(check.gag === 'weak' || check.gag === 'absent' ? [findingWords.seenSigns.gag] : []),
    ...(check.hears === 'no' ? [findingWords.seenSigns.hears] : []),
  ]
  const block = check.possibleBlockEffect ? [findingWords.possibleBlock] : []
  return [sayCode(check.blink), ...block, ...signs, ...others].join('; ')
}

function later(file: CaseFile): Block[] {
  const events = file.theCase.live('late-event').map((line) =>
    [
      fill(words.lateEvents, {
        what: sayCode(line.body.what),
        side: sideOf(line),
        date: sayMoment(line.body.firstSeen),
        by: sayCode(line.body.seenBy),
      }),
      line.body.text ?? '',
    ]
      .join(' ')
      .trim(),
  )
  const years = file.theCase.live('twelve-months').map((line) =>
    [
      fill(words.year, {
        side: sideOf(line),
        status: line.body.status,
        source: sayCode(line.body.source),
        face: line.body.face,
      }),
      line.body.text ?? '',
    ]
      .join(' ')
      .trim(),
  )
  const all = [...events, ...years]
  return all.length === 0 ? [] : [list(all)]
}
