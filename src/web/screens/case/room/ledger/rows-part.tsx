import { theatreTimers } from '#content/protocols/theatre-timers.ts'
import { ledgerScreenInEnglish as words } from '#content/wording/app-ledger.ts'
import { roomInEnglish } from '#content/wording/app-room.ts'
import { ledgerInEnglish } from '#content/wording/ledger.ts'
import { authorNamed } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import type { Ledger, LedgerRow } from '#core/theatre/ledger.ts'
import { sayCalendarDay } from '#core/time/calendar-day.ts'
import { clockOf } from '#core/time/moment.ts'
import { plain } from '#core/units/quantity.ts'
import { sayClockChange, sayGap, sayGiven, sayStamp } from '#documents/anaesthetic-record/say-row.ts'
import { Provenance } from '../../../../design/provenance.tsx'
import { useCaseView } from '../../case-view.ts'
import room from '../room.module.css'
import styles from './ledger.module.css'
import { ObservationCell } from './observation-cell.tsx'

type EntryRow = Extract<LedgerRow, { line: unknown }>

/** The whole column of time, newest first: what was measured, done and given, and where nothing was. */
export function RowsPart(props: {
  readonly operation: OperationOnFile
  readonly ledger: Ledger
  readonly mayWrite: boolean
}) {
  const { operation, ledger, mayWrite } = props
  const { file } = useCaseView()
  const { zone } = file.clinic
  const { observeEvery } = theatreTimers
  return (
    <section aria-labelledby="ledger" className={styles.ledger}>
      <h2 id="ledger">{words.ledger}</h2>
      <div>
        <p>{fill(ledgerInEnglish.rule, { minutes: plain(observeEvery.value.value) })}</p>
        <Provenance fact={observeEvery} />
      </div>
      {ledger.rows.length === 0 ? (
        <p>{words.empty}</p>
      ) : (
        <table className={styles.table}>
          <caption>{words.caption}</caption>
          <thead>
            <tr>
              <th scope="col">{words.columns.time}</th>
              <th scope="col">{words.columns.what}</th>
            </tr>
          </thead>
          <tbody>
            {newestFirst(ledger.rows).map((row) => (
              <tr key={keyOf(row)} data-row={row.kind} data-weight={row.kind === 'stamp' ? row.weight : undefined}>
                {row.kind === 'day' ? (
                  <th scope="rowgroup" colSpan={2}>
                    {sayCalendarDay(row.day)}
                  </th>
                ) : (
                  <>
                    <th scope="row">{clockOf(row.at, zone)}</th>
                    <td>
                      <Cell row={row} ledger={ledger} operation={operation} mayWrite={mayWrite} />
                    </td>
                  </>
                )}
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  )
}

/** Upside down; a day still stands above its own rows. */
function newestFirst(rows: readonly LedgerRow[]): LedgerRow[] {
  const days: LedgerRow[][] = []
  for (const row of rows) {
    if (row.kind === 'day') days.push([row])
    else days.at(-1)?.splice(1, 0, row)
  }
  return days.reverse().flat()
}

function isEntry(row: LedgerRow): row is EntryRow {
  return 'line' in row
}

function keyOf(row: LedgerRow): string {
  return isEntry(row) ? row.line.header.id : `${row.kind} ${row.at}`
}

function Cell(props: {
  readonly row: Exclude<LedgerRow, { kind: 'day' }>
  readonly ledger: Ledger
  readonly operation: OperationOnFile
  readonly mayWrite: boolean
}) {
  const { row, ledger, operation, mayWrite } = props
  const { together } = ledger
  const { zone } = useCaseView().file.clinic
  switch (row.kind) {
    case 'clock-change':
      return <strong>{sayClockChange(row, zone)}</strong>
    case 'gap':
      return <strong>{sayGap(row, zone)}</strong>
    case 'stamp':
      return (
        <div className={styles.event}>
          <span>{sayStamp(row.line, together, row.weight)}</span>
          <Kept row={row} />
        </div>
      )
    case 'given':
      return (
        <div className={styles.event}>
          <span>{sayGiven(row.line)}</span>
          <Kept row={row} />
        </div>
      )
    case 'observation':
      return (
        <ObservationCell line={row.line} sideBySide={row.sideBySide} operation={operation} mayWrite={mayWrite}>
          <Kept row={row} />
        </ObservationCell>
      )
  }
}

/** Who wrote it, whether it is sent yet, and whether its moment is sure. */
function Kept({ row: { line } }: { readonly row: EntryRow }) {
  const { file, unsent } = useCaseView()
  const waits = unsent.has(line.header.id)
  return (
    <span className={styles.by}>
      {authorNamed(file, line.header.author)}{' '}
      <span className={room.kept} data-waits={waits}>
        {waits ? roomInEnglish.here : roomInEnglish.sent}
      </span>
      {!line.orderCertain && <span> {words.doubt}</span>}
    </span>
  )
}
