import type { ReactNode } from 'react'
import { Link } from 'wouter'
import { groupsInEnglish, speciesInEnglish, usesInEnglish } from '#content/wording/app-formulary.ts'
import { sourcesInEnglish, drugPage as words } from '#content/wording/app-sources.ts'
import { type Species, speciesList } from '#core/animal/species.ts'
import { type DoseRow, type Drug, type NoDose, rowKey } from '#core/formulary/drug.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayQuantity } from '#documents/case/say-quantity.ts'
import { sayContent } from '#documents/sources/say-content.ts'
import { sayCumulative, sayMaximum, sayRow, sayStock, sayTablet, sayWhen } from '#documents/sources/say-drug.ts'
import { Provenance } from '../../design/provenance.tsx'
import styles from './drug.module.css'
import { type FactLine, FactTable, Sentences } from './facts.tsx'
import { SourcesPage } from './frame.tsx'
import { Ranges } from './ranges.tsx'
import { usesOfDrug } from './uses-of-drug.ts'

/** One drug: where it must not be used, then every range by animal, use and route; below it what the caller adds. */
export function DrugPage({ drug, children }: { readonly drug: Drug; readonly children?: ReactNode }) {
  return (
    <SourcesPage title={capital(drug.name)} part="formulary" cites={drug} lead={<About drug={drug} />}>
      {drug.none.length > 0 && <WithoutDose none={drug.none} />}
      {drug.localAnaesthetic && <Ceiling drug={drug} />}
      {speciesList.map((species) => (
        <OfSpecies key={species} drug={drug} species={species} />
      ))}
      <UsedIn drug={drug} />
      {children}
    </SourcesPage>
  )
}

function About({ drug }: { readonly drug: Drug }) {
  const groups = drug.groups.map((group) => groupsInEnglish[group]).join(', ')
  return (
    <dl className={styles.about}>
      <dt>{words.class}</dt>
      <dd>{drug.class}</dd>
      {groups && <dt>{words.groups}</dt>}
      {groups && <dd>{groups}</dd>}
      {drug.aliases.length > 0 && <dt>{words.aliases}</dt>}
      {drug.aliases.length > 0 && <dd>{drug.aliases.join(', ')}</dd>}
    </dl>
  )
}

/** A dose that is forbidden, or that nobody knows, is said as plainly as a number. */
function WithoutDose({ none }: { readonly none: readonly NoDose[] }) {
  return (
    <section aria-labelledby="without" className={styles.without}>
      <h2 id="without">{words.withoutTitle}</h2>
      <ul className="bare">
        {none.map((one) => (
          <li key={`${one.species} ${one.use ?? ''} ${one.because}`} className={styles.none} data-why={one.why}>
            <p>
              <strong className={styles.why}>{one.why === 'never' ? words.never : words.noDose}</strong>{' '}
              {speciesInEnglish[one.species]}, {one.formulation && `${one.formulation}, `}
              {one.use ? usesInEnglish[one.use] : words.everyUse}: {one.because}
            </p>
            <Provenance fact={one} />
          </li>
        ))}
      </ul>
    </section>
  )
}

function Ceiling({ drug: { localAnaesthetic } }: { readonly drug: Drug }) {
  if (!localAnaesthetic) return null
  const { limits, otherLimits = [], washout, formulations = [] } = localAnaesthetic
  const animal = (species: Species) => ({ animal: speciesInEnglish[species].toLowerCase() })
  const lines: FactLine[] = [
    ...speciesList.map((species) => ({
      key: species,
      what: fill(words.limit, animal(species)),
      value: <strong>{sayQuantity(limits[species].value)}</strong>,
      fact: limits[species],
    })),
    ...otherLimits.map((one) => ({
      key: `other ${one.species} ${one.sources.join()}`,
      what: fill(words.otherLimit, animal(one.species)),
      value: sayQuantity(one.value),
      fact: one,
    })),
    { key: 'washout', what: words.washout, value: sayQuantity(washout.value), fact: washout },
    ...formulations.flatMap((own) => [
      ...speciesList.map((species) => ({
        key: `${own.formulation} ${species}`,
        what: `${own.formulation}: ${fill(words.limit, animal(species))}`,
        value: <strong>{sayQuantity(own.limits[species].value)}</strong>,
        fact: own.limits[species],
      })),
      {
        key: `${own.formulation} washout`,
        what: `${own.formulation}: ${words.washout}`,
        value: sayQuantity(own.washout.value),
        fact: own.washout,
      },
    ]),
  ]
  return (
    <section aria-labelledby="limit" className={styles.species}>
      <h2 id="limit">{words.limitTitle}</h2>
      <p className="soft">{words.limitLead}</p>
      <FactTable caption={words.limitTitle} lines={lines} />
    </section>
  )
}

function OfSpecies({ drug, species }: { readonly drug: Drug; readonly species: Species }) {
  const rows = drug.doses.filter((row) => row.species === species)
  const stated = rows.length > 0 || drug.none.some((one) => one.species === species)
  return (
    <section aria-labelledby={species} className={styles.species}>
      <h2 id={species}>{speciesInEnglish[species]}</h2>
      {!stated && <p>{words.nothingFor}</p>}
      {rows.map((row) => (
        <Row key={rowKey(row)} row={row} />
      ))}
    </section>
  )
}

function Row({ row }: { readonly row: DoseRow }) {
  const title = capital(sayRow(row))
  return (
    <article className={styles.row}>
      <h3>{title}</h3>
      <Ranges row={row} />
      <FactTable caption={title} lines={linesOfRow(row)} />
      {row.neverByHand && row.neverByHand.length > 0 && (
        <div className={styles.byHand}>
          <h4>{words.neverByHand}</h4>
          <Sentences list={row.neverByHand} none="" />
        </div>
      )}
    </article>
  )
}

function linesOfRow(row: DoseRow): FactLine[] {
  const {
    interval,
    otherIntervals = [],
    loading,
    maxSingle,
    maxCumulative,
    stocks,
    tablets,
    cautions,
    exclusions,
  } = row
  const line = (what: string, fact: FactLine['fact'], value: FactLine['value']): FactLine => ({
    key: what,
    what,
    value,
    fact,
  })
  const said = (one: { words?: string; because?: string; when?: Parameters<typeof sayWhen>[0] }) =>
    [one.words ?? one.because, one.when && `(${sayWhen(one.when)})`].filter(Boolean).join(' ')
  return [
    line(words.interval, interval, interval.value.words),
    ...otherIntervals.map((other) => ({
      ...line(words.otherInterval, other, other.value.words),
      key: `${words.otherInterval} ${other.sources.join()}`,
    })),
    ...(loading ? [line(words.loading, loading, sayContent(loading.value))] : []),
    ...(maxSingle ? [line(words.maxSingle, maxSingle, sayMaximum(maxSingle.value))] : []),
    ...(maxCumulative ? [line(words.maxCumulative, maxCumulative, sayCumulative(maxCumulative.value))] : []),
    line(words.stocks, stocks, <Sentences list={stocks.value.map(sayStock)} none={words.unknown} />),
    ...(tablets
      ? [line(words.tablets, tablets, <Sentences list={tablets.value.map(sayTablet)} none={words.unknown} />)]
      : []),
    line(words.cautions, cautions, <Sentences list={cautions.value.map(said)} none={words.noneRecorded} />),
    line(words.exclusions, exclusions, <Sentences list={exclusions.value.map(said)} none={words.noneRecorded} />),
  ]
}

function UsedIn({ drug }: { readonly drug: Drug }) {
  const uses = usesOfDrug(drug)
  return (
    <section aria-labelledby="used" className={styles.species}>
      <h2 id="used">{sourcesInEnglish.usedIn}</h2>
      {uses.length === 0 && <p>{sourcesInEnglish.usedNowhere}</p>}
      <ul className={styles.uses}>
        {uses.map(({ href, said }) => (
          <li key={said}>
            <Link href={href}>{said}</Link>
          </li>
        ))}
      </ul>
    </section>
  )
}
