import { Link } from 'wouter'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { bandageAndAirway as card } from '#content/protocols/bandage-and-airway.ts'
import { wardInEnglish } from '#content/wording/app-ward.ts'
import type { Provenance as Fact, Sourced } from '#core/evidence/sourced.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import { policiesOf } from '#core/owed/policies.ts'
import type { WardSpan } from '#core/procedures/follow-up.ts'
import type { Span } from '#core/time/calendar-day.ts'
import type { Stay } from '#core/ward/stay.ts'
import { watchedBecause } from '#core/ward/watched.ts'
import { Provenance } from '../../../design/provenance.tsx'
import { nowHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'
import styles from './round.module.css'

const words = wardInEnglish.card

/** Bandage and airway: what is done first, who looks at what how often, and why this animal is watched more closely. */
export function AirwayCard({ stay }: { readonly stay: Stay }) {
  const { file, id } = useCaseView()
  const watched = watchedBecause(file.theCase, stay)
  const animal = file.theCase.latest('identity')?.body
  const operation = stay.operations.at(-1)
  const { set } = policiesOf(file)
  const spanOf = (one: WardSpan) => set.get(`owed.ward.${one}`)?.span ?? owedRules.ward.every[one].value
  const factOf = (one: WardSpan) => set.get(`owed.ward.${one}`)?.fact ?? owedRules.ward.every[one]
  const then: WardSpan = watched.length > 0 ? 'airway-watched' : 'airway'
  return (
    <aside className={styles.card} aria-labelledby="airway-card">
      <h2 id="airway-card">{words.title}</h2>
      <h3>{words.first}</h3>
      <Steps facts={card.first} ordered />
      {operation && (
        <p data-screen-only>
          <Link href={nowHref(id, operation.id, 'airway')} data-weight="side">
            {words.emergency}
          </Link>
        </p>
      )}
      <h3>{words.looks}</h3>
      <Steps facts={card.looks} />
      <h3>{words.often}</h3>
      <p>
        {fill(words.early, { every: capital(saySpan(spanOf('airway-early'))) })}{' '}
        {fill(words.later, { every: saySpan(spanOf(then)) })}
      </p>
      <Marks facts={[factOf('airway-early'), factOf(then)]} />
      <h3>{words.watched}</h3>
      {watched.length === 0 && <p>{words.notWatched}</p>}
      {animal?.species === 'dog' && animal.flatFace === 'unknown' && <p>{words.faceUnknown}</p>}
      {watched.length > 0 && <Steps facts={watched.map((reason) => card.watched[reason])} />}
      <h3>{words.who}</h3>
      <Steps facts={[card.who, card.night, card.deaths]} />
      <p data-screen-only>
        <button type="button" onClick={printCard}>
          {words.print}
        </button>
      </p>
    </aside>
  )
}

/** Only the card goes onto the paper. */
function printCard(): void {
  const { dataset } = document.documentElement
  dataset.print = 'card'
  window.print()
  delete dataset.print
}

function Steps({ facts, ordered = false }: { readonly facts: readonly Sourced<string>[]; readonly ordered?: boolean }) {
  const items = facts.map(({ value }) => <li key={value}>{value}</li>)
  return (
    <>
      {ordered ? <ol className={styles.first}>{items}</ol> : <ul>{items}</ul>}
      <Marks facts={facts} />
    </>
  )
}

/** Who says so, once for lines that are known in the same way. */
function Marks({ facts }: { readonly facts: readonly Fact[] }) {
  const unlike = new Map(facts.map((fact) => [`${fact.sources.join(' ')} ${fact.known}`, fact]))
  return (
    <div className={styles.marks}>
      {[...unlike].map(([key, fact]) => (
        <Provenance key={key} fact={fact} />
      ))}
    </div>
  )
}

function saySpan({ from, until }: Span): string {
  const about = { from: String(from.count), until: String(until.count), unit: words.units[until.unit] }
  return fill(words.span, about)
}
