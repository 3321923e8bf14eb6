import { useId } from 'react'
import { susceptibility } from '#content/susceptibility/index.ts'
import { typedReportInEnglish as words } from '#content/wording/app-culture.ts'
import { specimenResult } from '#content/wording/app-forms/specimen-result.ts'
import { agentById } from '#core/culture/agent.ts'
import { organismById } from '#core/culture/organism.ts'
import type { Recognised } from '#core/culture/recognise.ts'
import {
  agentTyped,
  emptyRow,
  filledRows,
  organismTyped,
  type TypedIsolate,
  type TypedReportRefusal,
  type TypedRow,
} from '#core/culture/typed-report.ts'
import { isolateTests } from '#core/journal/kinds/specimen-result.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import { Choices } from '../../../design/choices.tsx'
import { ColumnHeads } from '../../../design/column-heads.tsx'
import { ScrollBox } from '../../../design/scroll-box.tsx'
import { TextField } from '../../../design/text-field.tsx'
import styles from './results.module.css'

const units = ['', 'mg/L', 'mm'] as const

/** One organism of a report and its drugs, as they are typed. The last row waits for the next drug. */
export function TypedIsolatePart(props: {
  readonly place: number
  readonly isolate: TypedIsolate
  readonly refusals: readonly TypedReportRefusal[]
  readonly onIsolate: (isolate: TypedIsolate) => void
  readonly onRemove: (() => void) | null
}) {
  const { place, isolate, refusals, onIsolate, onRemove } = props
  const number = String(place + 1)
  const unwritten = refusals.some((one) => one.at === 'organism' && one.isolate === place)
  const rows = [...filledRows(isolate), emptyRow]
  const putRow = (at: number, next: TypedRow) =>
    onIsolate({ ...isolate, rows: rows.map((row, index) => (index === at ? next : row)) })
  const faultAt = (row: number) => {
    const one = refusals.find((refusal) => refusal.at === 'value' && refusal.isolate === place && refusal.row === row)
    return one ? words.faults[one.because] : null
  }
  const read = organismTyped(isolate, susceptibility)
  return (
    <section className={styles.typedIsolate} aria-label={fill(words.isolate, { number })}>
      <h2>{fill(words.isolate, { number })}</h2>
      <div className={styles.fields}>
        <div>
          <TextField
            label={words.organism}
            error={unwritten ? words.faults['not-written'] : null}
            autoComplete="off"
            list={`${number}-organisms`}
            value={isolate.organism}
            onText={(organism) => onIsolate({ ...isolate, organism, species: null })}
          />
          <datalist id={`${number}-organisms`}>
            {susceptibility.organisms.map(({ id, name }) => (
              <option key={id} value={name} />
            ))}
          </datalist>
          <ReadAs
            typed={isolate.organism}
            read={read}
            nameOf={(id) => organismById(susceptibility.organisms, id)?.name ?? id}
            onMeant={(species) => onIsolate({ ...isolate, species })}
          />
        </div>
        <TextField label={words.amount} value={isolate.amount} onText={(amount) => onIsolate({ ...isolate, amount })} />
      </div>
      <ScrollBox label={fill(words.drugs, { number })}>
        <table className={styles.typed}>
          <caption className="said">{fill(words.drugs, { number })}</caption>
          <ColumnHeads
            of={(['drug', 'value', 'unit', 'disk', 'category'] as const).map((column) => words.columns[column])}
          />
          <tbody>
            {rows.map((row, at) => (
              <TypedRowPart
                // A row that is being typed has no name of its own yet.
                // biome-ignore lint/suspicious/noArrayIndexKey: see above
                key={at}
                row={row}
                at={at}
                number={number}
                fault={faultAt(at)}
                onRow={(next) => putRow(at, next)}
              />
            ))}
          </tbody>
        </table>
      </ScrollBox>
      <details className={styles.opener} open={Object.keys(isolate.tests).length > 0}>
        <summary>{fill(words.tests, { number })}</summary>
        {isolateTests.map((test) => (
          <Choices
            key={test}
            inline
            legend={capital(specimenResult.fields['isolates.tests.test'].options[test])}
            value={isolate.tests[test] ?? 'not-done'}
            options={['positive', 'negative', 'not-done'] as const}
            say={(one) => words.testResults[one]}
            onChoose={(result) => {
              const { [test]: _, ...others } = isolate.tests
              onIsolate({ ...isolate, tests: result === 'not-done' ? others : { ...others, [test]: result } })
            }}
          />
        ))}
      </details>
      {onRemove && (
        <p>
          <button type="button" data-weight="quiet" onClick={onRemove}>
            {fill(words.removeIsolate, { number })}
          </button>
        </p>
      )}
    </section>
  )
}

function TypedRowPart(props: {
  readonly row: TypedRow
  readonly at: number
  readonly number: string
  readonly fault: string | null
  readonly onRow: (row: TypedRow) => void
}) {
  const { row, at, number, fault, onRow } = props
  const id = useId()
  const name = (column: keyof typeof words.columns) =>
    fill(words.cell, { column: words.columns[column], row: String(at + 1), number })
  const cell = (column: 'value' | 'disk' | 'category') => (
    <td>
      <input
        aria-label={name(column)}
        autoComplete="off"
        {...(column === 'value' && fault && { 'aria-invalid': true, 'aria-describedby': `${id}-fault` })}
        value={row[column]}
        onChange={(event) => onRow({ ...row, [column]: event.target.value })}
      />
    </td>
  )
  return (
    <tr>
      <td>
        <input
          aria-label={name('drug')}
          autoComplete="off"
          value={row.drug}
          onChange={(event) => onRow({ ...row, drug: event.target.value, agent: null })}
        />
        <ReadAs
          typed={row.drug}
          read={agentTyped(row, susceptibility)}
          nameOf={(agent) => agentById(susceptibility.agents, agent)?.name ?? agent}
          onMeant={(agent) => onRow({ ...row, agent })}
        />
        {fault && (
          <p id={`${id}-fault`} className={styles.fault}>
            {fault}
          </p>
        )}
      </td>
      {cell('value')}
      <td>
        <select
          aria-label={name('unit')}
          value={row.unit}
          onChange={(event) => onRow({ ...row, unit: units.find((unit) => unit === event.target.value) ?? '' })}
        >
          {units.map((unit) => (
            <option key={unit} value={unit}>
              {words.units[unit]}
            </option>
          ))}
        </select>
      </td>
      {cell('disk')}
      {cell('category')}
    </tr>
  )
}

/** What a typed name means; where nobody knows it, the names near to it, none of them chosen. */
function ReadAs(props: {
  readonly typed: string
  readonly read: Recognised
  readonly nameOf: (id: string) => string
  readonly onMeant: (id: string) => void
}) {
  const { typed, read, nameOf, onMeant } = props
  if (typed.trim() === '') return null
  return (
    <div className={styles.readAs} aria-live="polite">
      {read.id === null ? <p>{words.unknown}</p> : <p>{fill(words.readAs, { name: nameOf(read.id) })}</p>}
      {read.id === null && read.near.length > 0 && (
        <p>
          {words.meant}{' '}
          {read.near.map((one) => (
            <button key={one} type="button" data-weight="quiet" onClick={() => onMeant(one)}>
              {nameOf(one)}
            </button>
          ))}
        </p>
      )}
    </div>
  )
}
