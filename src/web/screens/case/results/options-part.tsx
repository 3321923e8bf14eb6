import { useMemo, useState } from 'react'
import { Temporal } from 'temporal-polyfill'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { cautions } from '#content/susceptibility/cautions.ts'
import { susceptibility } from '#content/susceptibility/index.ts'
import { cultureInEnglish } from '#content/wording/app-culture.ts'
import { optionWords } from '#content/wording/culture-options.ts'
import { askLaboratory } from '#core/culture/ask-laboratory.ts'
import { givenAtHome } from '#core/culture/given-at-home.ts'
import { type CultureOption, isReserved } from '#core/culture/option.ts'
import { cultureOptions } from '#core/culture/options.ts'
import type { ReportReading } from '#core/culture/read-report.ts'
import { untestedDrugs } from '#core/culture/untested-drugs.ts'
import { dosedAnimalOf, givenOf } from '#core/dosing/from-journal.ts'
import type { PlannedLine } from '#core/dosing/request.ts'
import { fill } from '#core/outcome/finding.ts'
import { knowledgeOf } from '#documents/case/knowledge-of.ts'
import { Notice } from '../../../design/notice.tsx'
import { Ticks } from '../../../design/ticks.tsx'
import { useMinute } from '../../../journal/use-minute.ts'
import { useCaseView } from '../case-view.ts'
import { OptionRow } from './option-row.tsx'
import { factsHere } from './read-here.ts'
import styles from './results.module.css'

const words = cultureInEnglish.options

/** Every drug of the report as an answer: could be used, nobody can say, cannot; with the reasons as sentences. */
export function OptionsPart({ reading }: { readonly reading: ReportReading }) {
  const { file } = useCaseView()
  const now = useMinute()
  const [left, setLeft] = useState<readonly string[]>([])
  const [lines, setLines] = useState<readonly PlannedLine[]>([])
  const covered = useMemo(() => reading.isolates.filter(({ key }) => !left.includes(key)), [reading, left])
  const animal = useMemo(() => dosedAnimalOf(file.theCase, now, dosingRules) ?? null, [file, now])
  const options = useMemo(() => {
    const atHome = givenAtHome(file.theCase, now, file.clinic.zone)
    const question = { isolates: covered, animal, given: givenOf(file.theCase, now), atHome, lines }
    const facts = { ...factsHere(file), cautions, knowledge: knowledgeOf(file) }
    return cultureOptions({ ...question, at: Temporal.Instant.from(now) }, facts)
  }, [covered, animal, file, now, lines])
  const keep = (line: PlannedLine | null, drug: string) =>
    setLines([...lines.filter((one) => one.drug !== drug), ...(line ? [line] : [])])
  const shown = (verdict: CultureOption['verdict']) =>
    options.filter((one) => one.verdict === verdict && (verdict === 'cannot' || !isReserved(one)))
  const reserved = options.filter((one) => one.verdict !== 'cannot' && isReserved(one))
  const could = shown('could')
  return (
    <section className={styles.part} aria-labelledby="options">
      <h2 id="options">{words.title}</h2>
      <p>{words.lead}</p>
      {!animal && (
        <Notice tone="warn">
          <p>{words.noAnimal}</p>
        </Notice>
      )}
      {reading.isolates.length > 1 && <Cover reading={reading} left={left} onLeave={setLeft} />}
      {covered.length > 0 && (
        <>
          {could.length === 0 && (
            <Notice tone="warn">
              <p>{words.none}</p>
            </Notice>
          )}
          <Group verdict="could" options={could} keep={keep} />
          <Group verdict="doubt" options={shown('doubt')} keep={keep} />
          <Group verdict="cannot" options={shown('cannot')} keep={keep} />
          {reserved.length > 0 && <Reserved options={reserved} keep={keep} />}
          <Ask options={options} reading={{ ...reading, isolates: covered }} open={could.length === 0} />
        </>
      )}
    </section>
  )
}

type Keep = (line: PlannedLine | null, drug: string) => void

function Cover(props: {
  readonly reading: ReportReading
  readonly left: readonly string[]
  readonly onLeave: (left: readonly string[]) => void
}) {
  const { reading, left, onLeave } = props
  const keys = reading.isolates.map(({ key }) => key)
  const nameOf = (key: string) => reading.isolates.find((one) => one.key === key)?.printed ?? key
  return (
    <div data-screen-only>
      <Ticks
        legend={words.cover}
        values={keys.filter((key) => !left.includes(key))}
        options={keys}
        say={(key) => `${key}. ${nameOf(key)}`}
        error={left.length === keys.length ? words.coverNone : null}
        onValues={(values) => onLeave(keys.filter((key) => !values.includes(key)))}
      />
      <p className="soft">{words.coverHelp}</p>
    </div>
  )
}

function Group(props: {
  readonly verdict: CultureOption['verdict']
  readonly options: readonly CultureOption[]
  readonly keep: Keep
}) {
  const { verdict, options, keep } = props
  if (options.length === 0) return null
  return (
    <>
      <h3>{words.heads[verdict]}</h3>
      <ul className={styles.options}>
        {options.map((option) => (
          <OptionRow key={option.agent} option={option} onLine={(line) => option.drug && keep(line, option.drug)} />
        ))}
      </ul>
    </>
  )
}

/** Category A stands behind a person's word that nothing else is left. */
function Reserved({ options, keep }: { readonly options: readonly CultureOption[]; readonly keep: Keep }) {
  const [none, setNone] = useState(false)
  return (
    <>
      <h3>{words.reserved}</h3>
      <p>{words.reservedLead}</p>
      <label className={styles.tick} data-screen-only>
        <input type="checkbox" checked={none} onChange={(event) => setNone(event.target.checked)} />
        <span>{words.reservedTick}</span>
      </label>
      {none && (
        <ul className={styles.options}>
          {options.map((option) => (
            <OptionRow key={option.agent} option={option} onLine={(line) => option.drug && keep(line, option.drug)} />
          ))}
        </ul>
      )}
    </>
  )
}

function Ask(props: {
  readonly options: readonly CultureOption[]
  readonly reading: ReportReading
  readonly open: boolean
}) {
  const { options, reading, open } = props
  const { file } = useCaseView()
  const species = file.theCase.latest('identity')?.body.species
  const others = species ? untestedDrugs(options, reading.isolates, species, susceptibility, formulary) : []
  const questions = askLaboratory(options, reading.isolates, others)
  return (
    <details className={styles.opener} open={open}>
      <summary>{cultureInEnglish.ask.title}</summary>
      <p>{cultureInEnglish.ask.lead}</p>
      <ul className={styles.facts}>
        {questions.map(({ code, about }) => (
          <li key={`${code} ${about.organism ?? ''}`}>{fill(optionWords.ask[code], about)}</li>
        ))}
      </ul>
    </details>
  )
}
