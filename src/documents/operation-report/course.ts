import { papersInEnglish } from '#content/wording/papers.ts'
import { reportInEnglish as words } from '#content/wording/report.ts'
import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import { fill } from '#core/outcome/finding.ts'
import type { Checkpoint, Procedure } from '#core/procedures/procedure.ts'
import { stampSentences } from '#core/procedures/stamp-sentences.ts'
import { markName } from '#core/theatre/mark-name.ts'
import { isLabelTap } from '#core/theatre/specimens.ts'
import { sayMark } from '#core/theatre/stamp-gates.ts'
import { timeOf } from '../case/case-words.ts'
import type { Table, Words } from '../render/model.ts'

type Stamp = Line<BodyOf<'theatre-stamp'>>

/**
 * The course of an operation as a table: every checkpoint of the procedure in its order, then any other stamp. A
 * checkpoint without a stamp says so; nothing is filled in.
 */
export function courseTable(theCase: Case, operation: string, procedure: Procedure): Table {
  const stamps = linesAbout(theCase, 'theatre-stamp', operation)
  const of = (id: string) => stamps.filter((line) => line.body.checkpoint === id)
  const planned = new Set<string>([...procedure.checkpoints.map(({ id }) => id), ...Object.keys(words.clockMarks)])
  const { premedication, 'anaesthesia-start': start, 'skin-mark': arrow, incision, ...ends } = words.clockMarks
  const { time, checkpoint, said } = words.courseColumns
  return {
    kind: 'table',
    caption: words.courseCaption,
    rowHeader: false,
    columns: [
      { head: time, align: 'left', share: 1 },
      { head: checkpoint, align: 'left', share: 2, weight: 'strong' },
      { head: said, align: 'left', share: 5 },
    ],
    rows: [
      ...markRows({ premedication, 'anaesthesia-start': start, 'skin-mark': arrow, incision }, of),
      ...procedure.checkpoints.flatMap((one) => checkpointRows(one, of(one.id))),
      ...stamps
        // The label of a pot stands with its sample.
        .filter(({ body }) => !planned.has(body.checkpoint) && !isLabelTap(body.checkpoint))
        .map((line) => [timeOf(line), markName(line.body.checkpoint, words) ?? line.body.checkpoint, looseWords(line)]),
      ...markRows(ends, of),
    ],
  }
}

type Row = readonly [string, string, Words]

function markRows(marks: Readonly<Record<string, string>>, of: (id: string) => readonly Stamp[]): Row[] {
  return Object.entries(marks).flatMap(([id, title]) => rowsOf(title, of(id), looseWords))
}

function checkpointRows(checkpoint: Checkpoint, stamps: readonly Stamp[]): Row[] {
  return rowsOf(checkpoint.title, stamps, ({ body }) => stampSentences(checkpoint, body).join(' '))
}

function rowsOf(title: string, stamps: readonly Stamp[], say: (line: Stamp) => string): Row[] {
  if (stamps.length === 0) return [['', title, papersInEnglish.notRecorded]]
  const conflict = stamps.length > 1 ? ` ${words.conflict}` : ''
  return stamps.map(
    (line): Row => [timeOf(line), title, [{ kind: 'text', text: say(line) }, ...marksOf(line, conflict)]],
  )
}

/** A stamp that no checkpoint of the procedure explains: its own words, never dropped. */
function looseWords({ body }: Stamp): string {
  if (body.answer === 'not-done') return fill(words.notDone, { because: body.text ?? words.noReason })
  return sayMark(body, words).join(' ') || words.stamped
}

/** "Written later", "time not certain": small, behind what was said. */
export function marksOf(
  line: Pick<Line<unknown>, 'late' | 'orderCertain'>,
  more = '',
): { kind: 'small'; text: string }[] {
  const marks: string[] = []
  if (line.late !== null) marks.push(words.lateMarks[line.late])
  if (!line.orderCertain) marks.push(words.orderUncertain)
  const said = marks.length === 0 ? '' : ` (${marks.join('; ')})`
  return said + more === '' ? [] : [{ kind: 'small', text: said + more }]
}
