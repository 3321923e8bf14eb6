import { breakpointsInEnglish as words } from '#content/wording/app-breakpoints.ts'
import { agentById } from '#core/culture/agent.ts'
import type { Breakpoint, Edition } from '#core/culture/breakpoint.ts'
import { editionName } from '#core/culture/edition-name.ts'
import { organismById } from '#core/culture/organism.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayEnds } from '#documents/sources/say-breakpoint.ts'
import drugStyles from './drug.module.css'
import { type FactLine, FactTable } from './facts.tsx'
import { SourcesPage } from './frame.tsx'
import { allAgents, allOrganisms } from './library.ts'
import { SecondHand } from './second-hand.tsx'

/** One edition of breakpoints: drug by drug, every row with its animal, organism, site and method. */
export function EditionPage({ edition }: { readonly edition: Edition }) {
  return (
    <SourcesPage title={editionName(edition)} part="breakpoints" cites={edition} lead={<About edition={edition} />}>
      {edition.own ? <OwnHand edition={edition} /> : <SecondHand />}
      {edition.rows.length === 0 && <p>{words.noRows}</p>}
      {byDrug(edition).map(([drug, rows]) => (
        <section key={drug} aria-label={drug} className={drugStyles.species}>
          <h2>{drug}</h2>
          <FactTable caption={drug} lines={rows.map((row) => lineOf(row, edition))} />
        </section>
      ))}
    </SourcesPage>
  )
}

function About({ edition }: { readonly edition: Edition }) {
  return (
    <div className="stack">
      <p>{words.madeFor[edition.audience]}</p>
      <p>{words.conventions[edition.convention]}</p>
      {edition.audience === 'people' && <p>{words.doses}</p>}
    </div>
  )
}

function OwnHand({ edition: { rows, current } }: { readonly edition: Edition }) {
  return (
    <p role="note">
      <strong>{fill(current ? words.ownHand : words.ownReplaced, { from: rows[0]?.ends.where ?? '' })}</strong>
    </p>
  )
}

function byDrug({ rows }: Edition): [string, Breakpoint[]][] {
  const drugs = new Map<string, Breakpoint[]>()
  for (const row of rows) {
    const name = capital(agentById(allAgents, row.agent)?.name ?? words.anyAgent)
    drugs.set(name, [...(drugs.get(name) ?? []), row])
  }
  return [...drugs].sort(([one], [other]) => (one < other ? -1 : 1))
}

function lineOf(row: Breakpoint, { convention }: Edition): FactLine {
  const onlyUrine = row.sites.every((site) => site === 'urinary')
  const more = [
    words.kinds[row.kind],
    onlyUrine ? words.urinaryOnly : '',
    row.dose ? fill(words.ends.dose, { dose: row.dose.value }) : '',
    row.remark ? `${capital(row.remark)}.` : '',
  ].filter((sentence) => sentence !== '')
  return {
    key: row.id,
    what: whatOf(row),
    value: (
      <>
        <p>
          <strong>{sayEnds(row, convention)}</strong>
        </p>
        {more.map((sentence) => (
          <p key={sentence}>{capital(sentence)}</p>
        ))}
      </>
    ),
    fact: row.dose ? [row.ends, row.dose] : row.ends,
  }
}

/** `Dog, Staphylococcus species; skin and soft tissue; MIC, mg/L`. */
function whatOf({ host, organisms, sites, route, method, disk }: Breakpoint): string {
  const organism = organismById(allOrganisms, organisms)?.name ?? words.anyOrganism
  const places = sites.map((site) => words.sites[site]).join(', ')
  const way = route ? `, ${words.routes[route]}` : ''
  return `${capital(words.hosts[host])}, ${organism}; ${places}${way}; ${fill(words.methods[method], { disk: disk ?? '' })}`
}
