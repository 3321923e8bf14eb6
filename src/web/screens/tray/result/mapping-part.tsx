import { useState } from 'react'
import { takeInResultInEnglish } from '#content/wording/app-take-in-result.ts'
import { columnMeaningNames } from '#content/wording/laboratory.ts'
import type { Case } from '#core/journal/fold.ts'
import { splitRows } from '#core/laboratory/delimited.ts'
import type { Fault } from '#core/laboratory/fault.ts'
import { type Column, columnMeanings, type TableMapping } from '#core/laboratory/mapping.ts'
import { fill } from '#core/outcome/finding.ts'
import { Choices } from '../../../design/choices.tsx'
import { TextField } from '../../../design/text-field.tsx'
import { writeEntry } from '../../../journal/write-entry.ts'
import { useWho } from '../../../session/use-who.ts'
import styles from './result.module.css'
import { toStored } from './source.ts'

const words = takeInResultInEnglish.table

/** What each column of a table says; a person looks before anything is read by it, and the laboratory is remembered. */
export function MappingPart(props: {
  readonly text: string
  readonly mapping: TableMapping
  readonly laboratory: string | null
  readonly fault: Fault | null
  readonly house: Case | null
  readonly put: (mapping: TableMapping) => void
}) {
  const { text, mapping, laboratory, fault, house, put } = props
  const rows = firstRows(text, mapping)
  const change = (place: number, part: Partial<Column>) => {
    put({ ...mapping, columns: mapping.columns.map((one, at) => (at === place ? { ...one, ...part } : one)) })
  }
  const comma = /(^|[^\d.,])[1-9]\d*,\d{3}\b/.test(text) && mapping.delimiter !== ','
  return (
    <details className={styles.mapping} open={laboratory === null || fault !== null}>
      <summary>{words.title}</summary>
      <p className="soft">{laboratory === null ? words.guessed : fill(words.remembered, { laboratory })}</p>
      <ul className={`bare ${styles.columns}`}>
        {mapping.columns.map((column, place) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: columns never move.
          <li key={place} className={styles.column}>
            <ColumnPart
              column={column}
              samples={rows.map((cells) => cells[place] ?? '')}
              put={(part) => change(place, part)}
            />
          </li>
        ))}
      </ul>
      {(mapping.dates !== null || fault?.code === 'date-two-readings') && (
        <Choices
          legend={words.dates}
          value={mapping.dates}
          options={['day-first', 'month-first'] as const}
          say={(one) => words.dateOrders[one]}
          onChoose={(dates) => put({ ...mapping, dates })}
        />
      )}
      {(mapping.comma !== null || comma) && (
        <Choices
          legend={words.comma}
          value={mapping.comma}
          options={['decimal', 'thousands'] as const}
          say={(one) => words.commas[one]}
          onChoose={(one) => put({ ...mapping, comma: one })}
        />
      )}
      <Remember key={laboratory ?? ''} mapping={mapping} laboratory={laboratory} house={house} />
    </details>
  )
}

function ColumnPart(props: {
  readonly column: Column
  readonly samples: readonly string[]
  readonly put: (part: Partial<Column>) => void
}) {
  const { column, samples, put } = props
  const wide = column.means === 'drug-values' || column.means === 'drug-categories'
  return (
    <>
      <label className={styles.heading}>
        <strong>{column.heading}</strong>
        <select
          value={column.means}
          onChange={(event) => {
            const means = event.target.value as Column['means']
            const drug = means === 'drug-values' || means === 'drug-categories' ? (column.drug ?? column.heading) : null
            put({ means, drug, unit: null })
          }}
        >
          {columnMeanings.map((one) => (
            <option key={one} value={one}>
              {columnMeaningNames[one]}
            </option>
          ))}
        </select>
      </label>
      {wide && (
        <TextField
          label={fill(words.drug, { heading: column.heading })}
          value={column.drug ?? ''}
          autoComplete="off"
          onText={(drug) => put({ drug })}
        />
      )}
      {column.means === 'drug-values' && (
        <label className={styles.heading}>
          <span>{words.unit}</span>
          <select
            value={column.unit ?? ''}
            onChange={(event) => put({ unit: (event.target.value || null) as Column['unit'] })}
          >
            <option value="">{words.unitNone}</option>
            <option value="mg/L">mg/L</option>
            <option value="mm">mm</option>
          </select>
        </label>
      )}
      <span className="soft">{samples.filter((cell) => cell !== '').join(' · ')}</span>
    </>
  )
}

function Remember(props: {
  readonly mapping: TableMapping
  readonly laboratory: string | null
  readonly house: Case | null
}) {
  const { mapping, laboratory, house } = props
  const { pen } = useWho()
  const [name, setName] = useState(laboratory ?? '')
  const [kept, setKept] = useState(false)
  const keep = async () => {
    const body = toStored(name.trim().slice(0, 80), mapping)
    const before = (house?.live('laboratory-table') ?? []).filter((one) => one.body.laboratory === body.laboratory)
    const supersedes = before.map(({ header }) => header.id)
    const about = { stream: 'clinic', subject: { kind: 'clinic' }, body, supersedes } as const
    await writeEntry(pen, { kind: 'laboratory-table', ...about, reason: before.length > 0 ? words.changed : null })
    setKept(true)
  }
  return (
    <div className={styles.remember}>
      <TextField label={words.remember} value={name} maxLength={80} autoComplete="off" onText={setName} />
      <button type="button" disabled={name.trim() === ''} onClick={() => void keep()}>
        {words.rememberDo}
      </button>
      {kept && <p role="status">{words.rememberedNow}</p>}
    </div>
  )
}

/** Two rows beside the headings, so that a wrong meaning is seen. Null rows where the table cannot be cut at all. */
function firstRows(text: string, { delimiter }: TableMapping): (readonly string[])[] {
  try {
    return splitRows(text, delimiter)
      .slice(1, 3)
      .map(({ cells }) => cells)
  } catch {
    return []
  }
}
