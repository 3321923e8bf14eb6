import { Link } from 'wouter'
import { readingInEnglish as words } from '#content/wording/app-case.ts'
import { fill } from '#core/outcome/finding.ts'
import type { Said, SaidRow } from '#core/reading/said.ts'
import { ScrollBox } from '../../design/scroll-box.tsx'
import { entryHref } from './case-hrefs.ts'
import { useCaseView } from './case-view.ts'
import styles from './entry-body.module.css'

/** Every answer of an entry, in the order of its form. What nobody recorded stands together at the end. */
export function EntryBody({ rows }: { readonly rows: readonly SaidRow[] }) {
  const left = rows.find(({ at }) => at === 'LEFT')
  const right = rows.find(({ at }) => at === 'RIGHT')
  const paired = left && right ? [left, right] : []
  const shown = rows.filter((row) => row.said.kind !== 'blank' && !paired.includes(row))
  return (
    <div className={styles.body}>
      {shown.length > 0 && (
        <dl className={styles.rows}>
          {shown.map((row) => (
            <Row key={row.at} row={row} />
          ))}
        </dl>
      )}
      {left && right && <Pair left={left} right={right} />}
      <Blanks rows={rows.filter((row) => !paired.includes(row))} />
    </div>
  )
}

function Row({ row }: { readonly row: SaidRow }) {
  return (
    <div className={styles.row} data-wide={row.said.kind === 'rows' || row.said.kind === 'list'}>
      <dt>{row.label}</dt>
      <dd>
        <SaidValue said={row.said} />
      </dd>
    </div>
  )
}

function SaidValue({ said }: { readonly said: Said }) {
  switch (said.kind) {
    case 'text':
      return <span className={said.open ? styles.open : undefined}>{said.text}</span>
    case 'blank':
      return <span className={styles.open}>{said.text}</span>
    case 'words':
      return said.lines.map((line) => <p key={line}>{line}</p>)
    case 'entries':
      return <Entries ids={said.ids} />
    case 'rows':
      return (
        <dl className={styles.rows}>
          {said.rows.map((row) => (
            <Row key={row.at} row={row} />
          ))}
        </dl>
      )
    case 'list':
      return <Groups groups={said.groups} />
    case 'drawn':
      return words.drawn
  }
}

function Entries({ ids }: { readonly ids: readonly string[] }) {
  const { id: place, nameOfEntry } = useCaseView()
  return (
    <ul className={styles.entries}>
      {ids.map((id) => (
        <li key={id}>
          <Link href={entryHref(place, id)}>{nameOfEntry(id)}</Link>
        </li>
      ))}
    </ul>
  )
}

/** Few short answers make a table; long ones stand under each other. */
function Groups({ groups }: { readonly groups: readonly (readonly SaidRow[])[] }) {
  const columns = [...new Map(groups.flat().map(({ at, label }) => [at, label]))].filter(([at]) =>
    groups.some((group) => group.some((row) => row.at === at && row.said.kind !== 'blank')),
  )
  const flat = groups.every((group) => group.every(({ said }) => said.kind === 'text' || said.kind === 'blank'))
  if (!flat || columns.length > 4) {
    return groups.map((group) => (
      <dl key={keyOf(group)} className={styles.group}>
        {group
          .filter(({ said }) => said.kind !== 'blank')
          .map((row) => (
            <Row key={row.at} row={row} />
          ))}
      </dl>
    ))
  }
  return (
    <ScrollBox label={columns.map(([, label]) => label).join(', ')}>
      <table className={styles.table}>
        <thead>
          <tr>
            {columns.map(([at, label]) => (
              <th key={at} scope="col">
                {label}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {groups.map((group) => (
            <tr key={keyOf(group)}>
              {columns.map(([at]) => {
                const row = group.find((one) => one.at === at)
                return <td key={at}>{row && <SaidValue said={row.said} />}</td>
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollBox>
  )
}

function keyOf(group: readonly SaidRow[]): string {
  return JSON.stringify(group.map(({ said }) => said))
}

/** LEFT and RIGHT of one entry beside each other; a side that nobody assessed says so in every row. */
function Pair({ left, right }: { readonly left: SaidRow; readonly right: SaidRow }) {
  const inside = (row: SaidRow) => (row.said.kind === 'rows' ? row.said.rows : [])
  const last = (row: SaidRow) => row.at.split('.').slice(1).join('.')
  const places = [...new Set([...inside(left), ...inside(right)].map(last))]
  const of = (side: SaidRow, place: string) => inside(side).find((row) => last(row) === place)
  return (
    <ScrollBox label={`${left.label}, ${right.label}`}>
      <table className={styles.pair}>
        <thead>
          <tr>
            <td />
            <th scope="col">{left.label}</th>
            <th scope="col">{right.label}</th>
          </tr>
        </thead>
        <tbody>
          {places.map((place) => (
            <tr key={place}>
              <th scope="row">{(of(left, place) ?? of(right, place))?.label}</th>
              {[left, right].map((side) => (
                <td key={side.at}>
                  <SaidValue said={of(side, place)?.said ?? side.said} />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollBox>
  )
}

function Blanks({ rows }: { readonly rows: readonly SaidRow[] }) {
  const of = (wanted: (blank: string) => boolean) =>
    rows.filter(({ said }) => said.kind === 'blank' && wanted(said.blank)).map(({ label }) => label.toLowerCase())
  const said = rows.filter(({ said: one }) => one.kind === 'blank' && one.blank !== 'not-recorded')
  const notRecorded = of((blank) => blank === 'not-recorded')
  return (
    <>
      {said.length > 0 && (
        <dl className={styles.rows}>
          {said.map((row) => (
            <Row key={row.at} row={row} />
          ))}
        </dl>
      )}
      {notRecorded.length > 0 && (
        <p className={styles.blank}>{fill(words.notRecorded, { list: notRecorded.join(', ') })}</p>
      )}
    </>
  )
}
