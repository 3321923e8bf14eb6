import type { YearsAnswer } from '#actions/yearly/read-years.ts'
import { namesInEnglish } from '#content/wording/app-case.ts'
import { yearsInEnglish as words } from '#content/wording/app-years.ts'
import { yearlyFiles } from '#content/wording/yearly-report.ts'
import { fill } from '#core/outcome/finding.ts'
import { dayOf, sayCalendarDay } from '#core/time/calendar-day.ts'
import { Notice } from '../../../design/notice.tsx'
import { useWho } from '../../../session/use-who.ts'
import { Owing } from './owing.tsx'
import type { Frozen } from './year-answer.ts'
import styles from './years.module.css'

/** A frozen year: when and by whom, its files, its errata, and the erratum it is owed. */
export function FrozenPart(props: { readonly frozen: Frozen; readonly answer: YearsAnswer; readonly may: boolean }) {
  const { frozen, answer, may } = props
  const { body, errata, broken, inConflict, owing } = frozen
  const { pen } = useWho()
  const sayDay = (at: string) => sayCalendarDay(dayOf({ at, zone: pen.zone }))
  const about = { on: sayDay(frozen.at), by: body.by, lookedAt: sayCalendarDay(body.lookedAt), rows: String(body.rows) }
  return (
    <>
      <p>{fill(words.frozen, about)}</p>
      {inConflict && (
        <Notice tone="warn">
          <p>{words.conflict}</p>
        </Notice>
      )}
      {broken !== null && (
        <Notice tone="warn">
          <p className={styles.hash}>{broken}</p>
        </Notice>
      )}
      {owing && (may ? <Owing owing={owing} frozen={frozen} readUntil={answer.readUntil} /> : <p>{words.mayNot}</p>)}
      {broken === null && <Files frozen={frozen} may={may} />}
      {body.decided.length > 0 && (
        <>
          <h3>{words.decidedTitle}</h3>
          <ul>
            {body.decided.map((one) => (
              <li key={one}>{one}</li>
            ))}
          </ul>
        </>
      )}
      {errata.length > 0 && (
        <>
          <h3>{words.errata}</h3>
          <ul>
            {errata.map((one) => (
              <li key={one.entry}>
                {fill(words.erratum, { on: sayDay(one.at), by: one.body.by, text: one.body.text })}
              </li>
            ))}
          </ul>
        </>
      )}
      <p className={`soft ${styles.hash}`}>
        {fill(words.frozenEntry, { data: body.dataHash, report: body.reportHash, method: body.method })}
      </p>
    </>
  )
}

function Files({ frozen: { files, rows, body }, may }: { readonly frozen: Frozen; readonly may: boolean }) {
  const nameOf = (names: Readonly<Record<string, string>>, file: string) =>
    Object.entries(names).find(([key]) => nameIs(key, file, body.year))?.[1] ?? file
  const left = rows.leftOut.map(({ species, procedure }) =>
    fill(words.operation, { animals: words.animals[species], procedure: namesInEnglish.procedures[procedure] }),
  )
  return (
    <>
      <h3>{words.files}</h3>
      <ul className={styles.files}>
        {files.map(({ file }) => (
          <li key={file}>
            <a href={`/api/reports/${body.year}/${file}`} target="_blank" rel="noreferrer">
              {nameOf(words.fileNames, file)}
            </a>
          </li>
        ))}
      </ul>
      {may && (
        <>
          <h3>{words.rows}</h3>
          <p className="soft">{words.rowsLead}</p>
          {left.length > 0 && <p className="soft">{fill(words.rowsLeftOut, { list: left.join('; ') })}</p>}
          {rows.given > 0 && (
            <ul className={styles.files}>
              {rows.files.map((file) => (
                <li key={file}>
                  <a href={`/api/reports/${body.year}/${file}`}>{nameOf(words.rowNames, file)}</a>
                </li>
              ))}
            </ul>
          )}
        </>
      )}
    </>
  )
}

function nameIs(key: string, file: string, year: number): boolean {
  return fill(yearlyFiles[key as keyof typeof yearlyFiles], { year: String(year) }) === file
}
