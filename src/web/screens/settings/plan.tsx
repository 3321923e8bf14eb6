import { useState } from 'react'
import { Link, useLocation, useParams } from 'wouter'
import { routeWords } from '#content/wording/app-form-words.ts'
import { usesInEnglish } from '#content/wording/app-formulary.ts'
import { plansInEnglish as words } from '#content/wording/app-settings-doses.ts'
import { doseFindingWords } from '#content/wording/dosing-findings.ts'
import type { Species } from '#core/animal/species.ts'
import { judgeChosen } from '#core/dosing/read-chosen.ts'
import { rowBehind } from '#core/dosing/read-plan.ts'
import { judgeItem } from '#core/dosing/shelf-state.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { mayWrite } from '#core/people/may-write.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { sayHow } from '#documents/case/say-how.ts'
import { sayUnit } from '#documents/case/say-quantity.ts'
import { Caution } from '../../design/caution.tsx'
import { ReadingView } from '../../design/reading-view.tsx'
import { useHouse } from '../../journal/cases.ts'
import { useMinute } from '../../journal/use-minute.ts'
import { whoWrote } from '../../journal/who-wrote.ts'
import { RangesBeside } from '../sources/ranges.tsx'
import { choosingFacts, drugs } from './drugs.ts'
import { SettingsPage } from './frame.tsx'
import { decoded } from './house-lines.ts'
import { useRefusal } from './may.ts'
import styles from './plan.module.css'
import { TakeBack } from './take-back.tsx'

export type Plan = BodyOf<'usual-plan'>

export function planHref(plan: string): string {
  return `/settings/plans/of/${encodeURIComponent(plan)}`
}

/** One usual plan: every line with its chosen dose, why, and what the sources say beside it. */
export function PlanScreen() {
  const { plan = '' } = useParams<{ plan: string }>()
  const name = decoded(plan)
  const reading = useHouse()
  return (
    <SettingsPage part="plans" title={name} lead={null}>
      <ReadingView reading={reading}>
        {({ file }) => {
          const lines = file.house.live('usual-plan').filter(({ body }) => body.plan === name)
          return lines.length === 0 ? (
            <p>{words.noSuch}</p>
          ) : (
            <>
              {lines.map((line) => (
                <PlanView key={line.header.id} line={line} file={file} />
              ))}
              <Caution />
            </>
          )
        }}
      </ReadingView>
    </SettingsPage>
  )
}

function PlanView({ line, file }: { readonly line: Line<Plan>; readonly file: CaseFile }) {
  const refusal = useRefusal(mayWrite['usual-plan'])
  const [back, setBack] = useState(false)
  const [, navigate] = useLocation()
  const { plan, species, lines } = line.body
  return (
    <>
      <p>
        {fill(words.animal, { animal: species })} · {fill(words.since, whoWrote(file, line))}
        {line.header.reason && ` · ${line.header.reason}`}
      </p>
      {refusal && <p className="soft">{refusal}</p>}
      <div className="row" data-screen-only>
        {refusal === null && (
          <Link href={`${planHref(plan)}/change`} data-weight="main">
            {words.change}
          </Link>
        )}
        <button type="button" data-weight="quiet" disabled={refusal !== null} onClick={() => setBack(true)}>
          {words.takeBack}
        </button>
      </div>
      <ol className={`bare ${styles.lines}`}>
        {lines.map((one) => (
          <PlanLine key={one.line} line={one} species={species} file={file} />
        ))}
      </ol>
      {back && (
        <TakeBack
          ids={[line.header.id]}
          title={fill(words.takeBackTitle, { plan })}
          help={words.takeBackHelp}
          because={words.because}
          verb={words.takeBackDo}
          onClose={() => {
            setBack(false)
            if (!file.house.line(line.header.id)) navigate('/settings/plans')
          }}
        />
      )}
    </>
  )
}

function PlanLine(props: { readonly line: Plan['lines'][number]; readonly species: Species; readonly file: CaseFile }) {
  const { line, species, file } = props
  const drug = drugs.find(({ id }) => id === line.drug)
  const row = rowBehind(line, species, drugs)
  const today = dayOf({ at: useMinute(), zone: file.clinic.zone })
  const product = file.house.live('shelf-item').find(({ body }) => body.item === line.shelfItem)
  const findings = [
    ...(drug && row ? judgeChosen(drug, row, line.dose, choosingFacts.rules) : []),
    ...(product ? judgeItem(product.body, today) : []),
  ]
  const how = sayHow(line.how)
  const bracket = line.qualifier ? ` (${line.qualifier})` : ''
  return (
    <li className={styles.line}>
      <div className={styles.chosen}>
        <h2>{line.line}</h2>
        <p>
          {drug ? <Link href={`/sources/formulary/${drug.id}`}>{drug.name}</Link> : line.drug},{' '}
          {usesInEnglish[line.use]}, {routeWords[line.route]}
          {bracket}
        </p>
        <p className={styles.dose}>{sayUnit(line.dose)}</p>
        {how.length > 0 && <p>{how.join('; ')}</p>}
        <p>{line.because}</p>
        <p className="soft">
          {words.columns.product}: {product?.body.label ?? sayNone(line.shelfItem)}
        </p>
        {findings.map(({ code, about }) => (
          <p key={code}>
            <strong>{fill(doseFindingWords[code], about)}</strong>
          </p>
        ))}
      </div>
      <div className={styles.sourcesSay}>{row ? <RangesBeside row={row} /> : <p>{words.noRow}</p>}</div>
    </li>
  )
}

function sayNone(id: string | null): string {
  return id === null ? words.noProduct : fill(words.gone, { id })
}
