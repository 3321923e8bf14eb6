import { Link } from 'wouter'
import { specimenFacts, specimenRules } from '#content/susceptibility/specimen-rules.ts'
import { cultureInEnglish } from '#content/wording/app-culture.ts'
import { optionWords } from '#content/wording/culture-options.ts'
import { specimenWords } from '#content/wording/report.ts'
import type { SpecimenStanding } from '#core/culture/specimen-standing.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import { dayOf, sayCalendarDay } from '#core/time/calendar-day.ts'
import { drugName } from '#documents/case/drug-name.ts'
import { Notice } from '../../../design/notice.tsx'
import { Provenance } from '../../../design/provenance.tsx'
import { WithSides } from '../../../design/with-sides.tsx'
import { entryHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'
import styles from './results.module.css'
import { sayAgo } from './say-ago.ts'

const words = cultureInEnglish.specimen

/** The age, place and side of a sample, and the drugs in the animal then and since: before anything is read from it. */
export function SpecimenPart(props: { readonly standing: SpecimenStanding | null; readonly isCulture: boolean }) {
  const { standing, isCulture } = props
  const { file } = useCaseView()
  if (!standing) {
    return (
      <Notice tone="warn" title={words.title}>
        <p>{words.gone}</p>
      </Notice>
    )
  }
  const { specimen, side, days } = standing
  const about = {
    site: capital(specimenWords.sites[specimen.body.site]),
    side: side ?? '',
    day: sayCalendarDay(dayOf({ at: specimen.at, zone: file.clinic.zone })),
    ago: sayAgo(days),
  }
  return (
    <section className={styles.part} aria-labelledby="specimen">
      <h2 id="specimen">{words.title}</h2>
      <p>
        <WithSides text={`${fill(side === null ? words.saidNoSide : words.said, about)}.`} />
      </p>
      <Doubts standing={standing} />
      {isCulture && (
        <>
          <p>{sayOnBoard(standing)}</p>
          <Since standing={standing} />
        </>
      )}
    </section>
  )
}

function Doubts({ standing: { doubts, days, specimen } }: { readonly standing: SpecimenStanding }) {
  const counted = specimen.body.site === 'bulla-on-entry' ? (['on-entry'] as const) : doubts
  const facts = counted.flatMap((one) => specimenFacts[one] ?? [])
  return (
    <>
      {doubts.length > 0 && (
        <Notice tone="warn" title={words.doubts}>
          <ul className={styles.facts}>
            {doubts.map((doubt) => (
              <li key={doubt}>{fill(optionWords.doubts[doubt], { days: String(days) })}</li>
            ))}
          </ul>
        </Notice>
      )}
      {facts.map((fact) => (
        <p key={fact.value} className={styles.fact}>
          <span>
            {words.counted}: {fact.value}.
          </span>
          <Provenance fact={fact} />
        </p>
      ))}
      {doubts.includes('old') && (
        <p className={styles.fact}>
          <span className="soft">{fill(words.old, { days: String(specimenRules.oldAfter.value.count) })}.</span>
          <Provenance fact={specimenRules.oldAfter} />
        </p>
      )}
    </>
  )
}

/** As it was written at the table, or else as the entries say. */
function sayOnBoard({ specimen, onBoard }: SpecimenStanding): string {
  const written = specimen.body.antibioticsOnBoard
  const which = [
    ...onBoard.given.map(({ body }) => drugName(body.drug)),
    ...onBoard.goesOn.map(({ body }) => fill(words.brought, { written: body.written })),
  ]
  const said = written === null ? [...new Set(which)].join(', ') : written
  return said === '' ? words.onBoardNone : fill(words.onBoard, { which: said })
}

function Since({ standing: { since } }: { readonly standing: SpecimenStanding }) {
  const { id } = useCaseView()
  if (since.length === 0) return <p>{words.sinceNone}</p>
  return (
    <>
      <h3>{words.since}</h3>
      <ul className={styles.facts}>
        {since.map(({ entry, drug, how, day, days }) => (
          <li key={`${entry} ${drug}`}>
            <Link href={entryHref(id, entry)}>
              {fill(words.sinceHow[how], {
                drug: drugName(drug),
                day: sayCalendarDay(day),
                days: String(days ?? ''),
              })}
            </Link>
          </li>
        ))}
      </ul>
    </>
  )
}
