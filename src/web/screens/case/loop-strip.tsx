import { tissueFacts } from '#content/follow-up/tissue-diagnoses.ts'
import { chaptersInEnglish } from '#content/wording/app-chapters.ts'
import { loopInEnglish as words } from '#content/wording/app-loop.ts'
import { owedInEnglish } from '#content/wording/owed.ts'
import { specimenWords } from '#content/wording/report.ts'
import { tissueSaid } from '#core/culture/tissue.ts'
import { authorNamed } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { type LoopStep, type LoopWay, waysOf } from '#core/owed/loop-steps.ts'
import { isLate, type OwedItem } from '#core/owed/owed-item.ts'
import { deputyOf } from '#core/owed/sort.ts'
import { type SpecimenLoop, specimenLoopsOf } from '#core/owed/specimen-loop.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { sayMoment } from '#core/time/moment.ts'
import { Provenance } from '../../design/provenance.tsx'
import { sayDay, sayWhen } from '../../design/say-when.ts'
import { SideWord } from '../../design/side-word.tsx'
import { useMinute } from '../../journal/use-minute.ts'
import { usePeople } from '../../session/use-people.ts'
import { reportHref } from './case-hrefs.ts'
import { useCaseView } from './case-view.ts'
import styles from './loop-strip.module.css'

/** From the swab to "owner told", one strip for each report and for each that has not come: who did what, who owes what. */
export function LoopStrips() {
  const { file, owed } = useCaseView()
  const loops = specimenLoopsOf(file.theCase).map((loop) => ({ loop, ways: waysOf(loop, owed, file.theCase) }))
  if (loops.length === 0) return null
  const open = loops.filter(({ ways }) => ways.some(({ isOpen }) => isOpen))
  const closed = loops.filter((one) => !open.includes(one))
  return (
    <section id="specimen-loops" aria-labelledby="specimen-loops-title" className="stack">
      <h2 id="specimen-loops-title">{words.title}</h2>
      {open.length > 0 && <Strips all={open} />}
      {closed.length > 0 && (
        <details className={styles.opener}>
          <summary>{sayCount(words.closed, closed.length)}</summary>
          <Strips all={closed} />
        </details>
      )}
    </section>
  )
}

type Loop = { readonly loop: SpecimenLoop; readonly ways: readonly LoopWay[] }

function Strips({ all }: { readonly all: readonly Loop[] }) {
  return (
    <ul className={styles.list}>
      {all.map(({ loop, ways }) => (
        <li key={loop.specimen.header.id} className={styles.specimen}>
          <p>
            <strong>{loop.specimen.body.label}</strong> {specimenWords.sites[loop.specimen.body.site]}{' '}
            {loop.side && <SideWord side={loop.side} />}
          </p>
          {ways.map((way) => (
            <Way key={way.report?.result.header.id ?? way.expected} way={way} loop={loop} />
          ))}
        </li>
      ))}
    </ul>
  )
}

function Way({ way, loop }: { readonly way: LoopWay; readonly loop: SpecimenLoop }) {
  const { report, expected, steps } = way
  const name = report
    ? fill(words.report, {
        status: specimenWords.status[report.result.body.status],
        when: sayMoment(report.result.header.happenedAt),
      })
    : words.expected[expected ?? 'culture']
  return (
    <div>
      <p className="soft">{name}</p>
      {/* biome-ignore lint/a11y/noRedundantRoles: without it a list that shows no marks is none to some screen readers */}
      <ol className={styles.steps} role="list" aria-label={name}>
        {steps.map((step) => (
          <Step key={step.step} step={step} />
        ))}
      </ol>
      <Before way={way} />
      <Tissue way={way} loop={loop} />
    </div>
  )
}

function Step({ step }: { readonly step: LoopStep }) {
  const { file, id } = useCaseView()
  const sayOwes = useSayOwes()
  const now = useMinute()
  const late = step.state === 'owed' && isLate(step.item, now)
  return (
    <li className={styles.step} data-state={step.state} data-late={late}>
      <span className={styles.name}>{words.steps[step.step]}</span>
      <span className={styles.who}>
        {step.state === 'behind' && words.behind}
        {step.state === 'owed' && <a href={`?owed=${step.item.id}#owed-${step.item.id}`}>{sayOwes(step.item)}</a>}
        {step.state === 'done' && (
          <a href={step.step === 'come' ? reportHref(id, step.entry) : `#entry-${step.entry}`}>
            {fill(words.done, { who: authorNamed(file, step.by), when: sayWhen(step.at, file.clinic.zone) })}
          </a>
        )}
      </span>
    </li>
  )
}

/** Whose the step is today, the deputy of somebody who is away, and until when. */
function useSayOwes(): (item: OwedItem) => string {
  const { people, leaves, nameOf } = usePeople()
  const { file } = useCaseView()
  const now = useMinute()
  return (item) => {
    const { person, who, dueBy, zone, precision } = item
    const named = person === null ? owedInEnglish.who[who] : (file.people.get(person)?.name ?? nameOf(person))
    const deputy = person === null ? null : deputyOf({ who: person }, people, leaves, dayOf({ at: now, zone }))
    const said = deputy === null ? named : fill(words.deputy, { name: nameOf(deputy), of: named })
    const when = precision === 'minute' ? sayWhen(dueBy, zone) : sayDay(dueBy, zone)
    return fill(isLate(item, now) ? words.late : words.owed, { who: said, when })
  }
}

/** A corrected report names whoever had acted on the version before. */
function Before({ way: { report } }: { readonly way: LoopWay }) {
  const { file } = useCaseView()
  if (!report || report.before.length === 0) return null
  return (
    <>
      <p>{words.before}</p>
      <ul>
        {report.before.map(({ what, line }) => (
          <li key={line.header.id}>
            {fill(words.acted[what], {
              by: authorNamed(file, line.header.author),
              when: sayMoment(line.header.happenedAt),
            })}
          </li>
        ))}
      </ul>
    </>
  )
}

/** Of tissue or cells: what is published of it, and which chapter it changes. */
function Tissue({ way: { report }, loop }: { readonly way: LoopWay; readonly loop: SpecimenLoop }) {
  const { file } = useCaseView()
  const species = file.theCase.latest('identity')?.body.species
  const tissue = report?.result.body.tissue
  if (!tissue || !species) return null
  const said = tissueSaid(tissue, { species, operated: loop.specimen.body.operation !== null }, tissueFacts)
  return (
    <details className={styles.opener}>
      <summary>{words.tissue}</summary>
      <p>{tissue.diagnosis}</p>
      <ul>
        {said.sentences.map((fact) => (
          <li key={fact.value}>
            {fact.value} <Provenance fact={fact} />
          </li>
        ))}
        {said.changes.map(({ chapter, text }) => (
          <li key={text.value}>
            {fill(words.changes, { chapter: chaptersInEnglish.chapters[chapter] })} {text.value}{' '}
            <Provenance fact={text} />
          </li>
        ))}
      </ul>
    </details>
  )
}
