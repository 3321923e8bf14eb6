import { ledgerInEnglish as words } from '#content/wording/ledger.ts'
import { anaestheticRecordWords as own } from '#content/wording/papers-anaesthetic.ts'
import { authorNamed, type CaseFile } from '#core/journal/clinic.ts'
import { capital } from '#core/outcome/capital.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { isPressure } from '#core/theatre/last-values.ts'
import type { Ledger, LedgerRow, Observable, Observation } from '#core/theatre/ledger.ts'
import { sayCalendarDay } from '#core/time/calendar-day.ts'
import { clockOf } from '#core/time/moment.ts'
import { marksOf } from '../operation-report/course.ts'
import { type Block, paragraph, type Run, small, strong, text, type Words } from '../render/model.ts'
import { sayBeside, sayClockChange, sayGap, sayGiven, sayStamp, sayValue } from './say-row.ts'

/** The whole column of time as a table: what the strips draw, and everything that they cannot. */
export function ledgerTable(file: CaseFile, { rows, together }: Ledger): Block {
  if (rows.length === 0) return paragraph(own.nothing)
  const { time, said, by } = own.ledgerColumns
  const methods = new Map<Observable, string | null>()
  return {
    kind: 'table',
    caption: own.ledgerCaption,
    rowHeader: false,
    columns: [
      { head: time, align: 'left', share: 0.8 },
      { head: said, align: 'left', share: 6 },
      { head: by, align: 'left', share: 1.7 },
    ],
    rows: rows.map((row) => rowOf(withoutRepeats(row, methods), file, together)),
  }
}

/** A way of measuring is said again for pressures, and otherwise only where it changed. */
function withoutRepeats(row: LedgerRow, before: Map<Observable, string | null>): LedgerRow {
  if (row.kind !== 'observation') return row
  const values = row.line.body.values.map((value) => {
    const same = !isPressure(value.what) && before.get(value.what) === value.method
    before.set(value.what, value.method)
    return same ? { ...value, method: null } : value
  })
  return { ...row, line: { ...row.line, body: { ...row.line.body, values } } }
}

function rowOf(row: LedgerRow, file: CaseFile, together: readonly OperationOnFile[]): readonly [string, Words, string] {
  const { zone } = file.clinic
  const time = clockOf(row.at, zone)
  switch (row.kind) {
    case 'day':
      return ['', [strong(sayCalendarDay(row.day))], '']
    case 'clock-change':
      return ['', [strong(sayClockChange(row, zone))], '']
    case 'gap':
      return ['', [strong(sayGap(row, zone))], '']
    case 'stamp': {
      const said = sayStamp(row.line, together, row.weight)
      return [time, [row.weight === 'step' ? text(said) : strong(said), ...marksOf(row.line)], byOf(row, file)]
    }
    case 'given':
      return [time, [text(sayGiven(row.line)), ...marksOf(row.line)], byOf(row, file)]
    case 'observation': {
      const doubt = row.sideBySide ? ` ${words.sideBySide}` : ''
      return [time, [...observed(row.line), ...marksOf(row.line, doubt)], byOf(row, file)]
    }
  }
}

function byOf({ line }: Extract<LedgerRow, { line: unknown }>, file: CaseFile): string {
  return authorNamed(file, line.header.author)
}

/** The values one behind the other; an artefact stays readable and says what it is. */
function observed(line: Observation): Run[] {
  const values = line.body.values.flatMap((value, index): Run[] => {
    const said = index === 0 ? capital(sayValue(value)) : sayValue(value)
    const before = index === 0 ? [] : [text('; ')]
    return value.artefact ? [...before, small(`${said} `), strong(words.artefact)] : [...before, text(said)]
  })
  const beside = sayBeside(line)
  if (values.length === 0 && beside.length === 0) return [text(capital(words.nothingWritten))]
  const rest = beside.length === 0 ? [] : [text(`${values.length === 0 ? '' : '. '}${beside.join('. ')}`)]
  return [...values, ...rest]
}
