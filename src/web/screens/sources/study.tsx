import { Link, useParams } from 'wouter'
import { outcomeDefinitions } from '#content/outcomes/outcome-definitions.ts'
import { outcomeTitles } from '#content/wording/app-outcomes.ts'
import { sourcesInEnglish, studyPage as words } from '#content/wording/app-sources.ts'
import { asideReasonsInEnglish, countBasisInEnglish, oddsInEnglish } from '#content/wording/odds.ts'
import { publishedCount } from '#core/evidence/published.ts'
import type { Study, StudyOutcome } from '#core/evidence/study.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount, sayInterval, sayPerHundred } from '#documents/sources/say-study.ts'
import { Provenance } from '../../design/provenance.tsx'
import drugStyles from './drug.module.css'
import { NoSuchPage, SourcesPage } from './frame.tsx'
import { IntervalLine } from './interval-line.tsx'
import { allStudies, hrefOf, sourceNamed } from './library.ts'
import { shortName } from './studies.tsx'
import styles from './study.module.css'

/** One study: what it counted, in which animals, after which operation. */
export function StudyScreen() {
  const { study: id = '' } = useParams<{ study: string }>()
  const study = allStudies.find((one) => one.id === id)
  return study ? <StudyPage study={study} /> : <NoSuchPage part="studies" />
}

export function StudyPage({ study }: { readonly study: Study }) {
  return (
    <SourcesPage title={shortName(study)} part="studies" cites={study} lead={<About study={study} />}>
      {study.overlaps.length > 0 && (
        <ul className={styles.overlaps}>
          {study.overlaps.map((other) => (
            <li key={other.study}>
              <Overlap said={words.overlap[other.likelihood]} other={other} />
            </li>
          ))}
        </ul>
      )}
      {study.rows.length === 0 && <p>{words.nothing}</p>}
      {study.rows.length > 0 && <p className="soft">{words.axis}</p>}
      {groupsOf(study).map(([group, rows]) => (
        <section key={group} aria-label={group} className={drugStyles.species}>
          <h2>{group}</h2>
          {rows.map((row) => (
            <Outcome key={keyOf(row)} row={row} />
          ))}
        </section>
      ))}
    </SourcesPage>
  )
}

function About({ study }: { readonly study: Study }) {
  return (
    <div className="stack">
      <p>
        <Link href={hrefOf('reference', study.source)}>{sourceNamed(study.source)?.citation ?? study.source}</Link>
      </p>
      <dl className={drugStyles.about}>
        <dt>{words.design}</dt>
        <dd>{words.designs[study.design]}</dd>
        <dt>{words.year}</dt>
        <dd>{study.year}</dd>
        {study.doi && <dt>{words.doi}</dt>}
        {study.doi && <dd className={styles.doi}>{study.doi}</dd>}
      </dl>
      {study.remark && <p>{study.remark}</p>}
    </div>
  )
}

/** The sentence about animals that two studies may share, with the other study as a link. */
function Overlap({ said, other }: { readonly said: string; readonly other: Study['overlaps'][number] }) {
  const [before = '', after = ''] = said.split('{study}')
  return (
    <>
      {before}
      <Link href={hrefOf('studies', other.study)}>{shortName({ id: other.study })}</Link>
      {fill(after, { because: other.because })}
    </>
  )
}

/** Rows of the same animals, operation and unit stand together; nothing is added up. */
function groupsOf({ rows }: Study): [string, StudyOutcome[]][] {
  const groups = new Map<string, StudyOutcome[]>()
  for (const row of rows) {
    const group = capital(
      fill(words.group, {
        animal: sourcesInEnglish.species[row.species],
        operation: oddsInEnglish.procedures[row.procedure],
        unit: words.units[row.unit],
      }),
    )
    groups.set(group, [...(groups.get(group) ?? []), row])
  }
  return [...groups]
}

function keyOf({ outcome, subgroup = '', reading = '', counted, followed }: StudyOutcome): string {
  return JSON.stringify([outcome, subgroup, reading, counted, followed])
}

function Outcome({ row }: { readonly row: StudyOutcome }) {
  const found = row.counted.kind === 'count' ? publishedCount(row) : null
  return (
    <article className={styles.outcome} data-use={row.pool.use}>
      <div className={styles.what}>
        <h3>{outcomeTitles[row.outcome]}</h3>
        <p className={styles.meaning}>{outcomeDefinitions[row.outcome].meaning}</p>
        <Remarks row={row} />
      </div>
      <div className={styles.figures}>
        <p className={styles.count}>{sayCount(row)}</p>
        {found && <IntervalLine found={found} />}
        <dl className={styles.numbers}>
          <dt>{words.drawn}</dt>
          <dd>{found ? sayPerHundred(found.share) : words.notKnown}</dd>
          <dt>{words.exact}</dt>
          <dd>{found ? sayInterval(found.exact) : words.notKnown}</dd>
          <dt>{words.wilson}</dt>
          <dd>{found ? sayInterval(found.wilson) : words.notKnown}</dd>
        </dl>
        <Provenance fact={row} />
      </div>
    </article>
  )
}

function Remarks({ row }: { readonly row: StudyOutcome }) {
  const { pool, followed, basis, subgroup, reading, remark, printed, animals } = row
  return (
    <dl className={styles.remarks}>
      <dt>{words.use}</dt>
      <dd>
        {pool.use === 'primary' ? words.counted : fill(words.aside, { because: asideReasonsInEnglish[pool.because] })}
      </dd>
      <dt>{words.followed}</dt>
      <dd>{followed.kind === 'stated' ? followed.text : words.notStated}</dd>
      <dt>{words.count}</dt>
      <dd>
        {[
          fill(words.basis, { basis: countBasisInEnglish[basis] }),
          animals !== undefined && row.unit !== 'animal' && fill(words.fromAnimals, { count: String(animals) }),
          subgroup && fill(words.subgroup, { text: subgroup }),
          reading && fill(words.reading, { text: reading }),
          remark,
          printed,
        ]
          .filter(Boolean)
          .join(' ')}
      </dd>
    </dl>
  )
}
