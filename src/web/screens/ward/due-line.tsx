import { useId } from 'react'
import { Link } from 'wouter'
import { wardInEnglish as words } from '#content/wording/app-ward.ts'
import { owedInEnglish } from '#content/wording/owed.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import { settledBy } from '#core/owed/owed-code-of.ts'
import type { OwedItem } from '#core/owed/owed-item.ts'
import { sayOwed } from '#core/owed/owed-wording.ts'
import { writersOf } from '#core/people/may-write.ts'
import { clockOf } from '#core/time/moment.ts'
import type { Due } from '#core/ward/due-list.ts'
import { drugName } from '#documents/case/drug-name.ts'
import { Provenance } from '../../design/provenance.tsx'
import { WithSides } from '../../design/with-sides.tsx'
import { useWho } from '../../session/use-who.ts'
import { wardPageHref } from '../case/case-hrefs.ts'
import { sayDue } from './say-due.ts'
import { useRounds } from './use-rounds.ts'
import styles from './ward.module.css'
import { wayToAct } from './way-to-act.ts'

export type WardDue = {
  readonly due: Due<OwedItem>
  readonly file: CaseFile
  readonly place: string
  readonly name: string
}

/** What one tap wrote, and how it is taken back. */
export type Kept = { readonly said: string; readonly takeBack: () => Promise<unknown> }

/** One thing that is due: how late, what, of whom, and the one tap or link that does it. */
export function DueLine(
  props: WardDue & {
    readonly now: string
    /** Left out on the page of the animal itself. */
    readonly named: boolean
    readonly onKept: (kept: Kept) => void
  },
) {
  const { due, file, place, name, now, named, onKept } = props
  const { item } = due
  const id = useId()
  const { me, pen } = useWho()
  const { look, wet, takeBack } = useRounds(file)
  const what = whatIsDue(item)
  const { why } = sayOwed(item, owedInEnglish)
  const kind = settledBy[item.what]
  const may = kind !== null && writersOf(item.what === 'eye-lubricated' ? 'ward-score' : kind).includes(me.role)
  const way = may ? wayToAct(item, place, file) : null
  const act = (words.act as Readonly<Record<string, string>>)[item.what] ?? ''
  const tap = async (which: 'wet' | 'urine') => {
    const { side } = item
    const entry = await (which === 'wet' && side ? wet(side) : look({ urine: 'passed' }))
    const done = which === 'wet' && side ? fill(words.keptWet, { side }) : words.keptUrine
    const at = clockOf(entry.happenedAt.at, pen.zone)
    onKept({ said: fill(words.kept, { what: done, name, at }), takeBack: () => takeBack(entry.id) })
  }
  const label = fill(words.actSaid, { act, what, name })
  return (
    <li className={styles.line} data-band={due.band}>
      <p className={styles.when} data-band={due.band}>
        {sayDue(due, now)}
      </p>
      <div className={styles.what}>
        <p id={id}>
          {named && (
            <>
              <Link href={wardPageHref(place)} className={styles.name}>
                {name}
              </Link>{' '}
            </>
          )}
          <strong>
            <WithSides text={what} />
          </strong>
        </p>
        <details className={styles.why}>
          <summary aria-label={fill(words.whyOf, { what, name })}>{words.why}</summary>
          <p>
            <WithSides text={why} />
          </p>
          {item.facts.map((fact) => (
            <Provenance key={`${fact.sources.join(' ')} ${fact.where}`} fact={fact} />
          ))}
        </details>
      </div>
      {way !== null &&
        (way.how === 'tap' ? (
          <button type="button" className={styles.act} aria-label={label} onClick={() => void tap(way.tap)}>
            {act}
          </button>
        ) : named || way.how === 'page' ? (
          <Link href={way.href} className={styles.act} aria-label={label} data-weight="side">
            {act}
          </Link>
        ) : (
          <a href={way.href.slice(way.href.indexOf('#'))} className={styles.act} aria-label={label} data-weight="side">
            {act}
          </a>
        ))}
    </li>
  )
}

/** The drug by its name; everything else as it is owed. */
export function whatIsDue(item: OwedItem): string {
  const drug = item.about.drug
  return sayOwed(drug === undefined ? item : { ...item, about: { ...item.about, drug: drugName(drug) } }, owedInEnglish)
    .what
}
