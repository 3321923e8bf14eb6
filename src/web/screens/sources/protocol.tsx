import { Link, useParams } from 'wouter'
import { routeWords } from '#content/wording/app-form-words.ts'
import { groupsInEnglish, speciesInEnglish } from '#content/wording/app-formulary.ts'
import { protocolPage as words } from '#content/wording/app-sources.ts'
import { type RuleName, rulesInEnglish } from '#content/wording/app-sources-rules.ts'
import { calcSentences } from '#content/wording/calc.ts'
import { emergencyTitles } from '#content/wording/emergency.ts'
import type { Species } from '#core/animal/species.ts'
import type { EmergencyGroup, EmergencyRow } from '#core/dosing/emergency-row.ts'
import type { Interaction } from '#core/dosing/rules.ts'
import type { Provenance } from '#core/evidence/sourced.ts'
import { drugById } from '#core/formulary/drug.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayQuantity } from '#documents/case/say-quantity.ts'
import { sayContent } from '#documents/sources/say-content.ts'
import drugStyles from './drug.module.css'
import { type FactLine, FactTable, linesOf, Sentences } from './facts.tsx'
import { NoSuchPage, SourcesPage } from './frame.tsx'
import { drugs, emergency, hrefOf, ruleNames, rules } from './library.ts'

/** What is done on one shout, or one rule with its facts. */
export function ProtocolScreen() {
  const { protocol: id = '' } = useParams<{ protocol: string }>()
  const group = emergency.find(({ call }) => call === id)
  if (group) return <EmergencyPage group={group} />
  const name = ruleNames.find((one) => one === id)
  return name ? <RulePage name={name} /> : <NoSuchPage part="protocols" />
}

export function EmergencyPage({ group }: { readonly group: EmergencyGroup }) {
  const steps: FactLine[] = group.steps.map((step) => ({
    key: step.value,
    what: animals(step.species),
    value: step.value,
    fact: step,
  }))
  return (
    <SourcesPage title={emergencyTitles[group.call]} lead={words.emergency} part="protocols" cites={group}>
      {steps.length > 0 && (
        <section aria-labelledby="steps" className={drugStyles.species}>
          <h2 id="steps">{words.steps}</h2>
          <FactTable caption={words.steps} lines={steps} />
        </section>
      )}
      {group.rows.length > 0 && (
        <section aria-labelledby="rows" className={drugStyles.species}>
          <h2 id="rows">{words.rows}</h2>
          {group.rows.map((row) => (
            <EmergencyDrug key={`${row.name} ${row.species.join()} ${row.edition}`} row={row} />
          ))}
        </section>
      )}
    </SourcesPage>
  )
}

function EmergencyDrug({ row }: { readonly row: EmergencyRow }) {
  const { dose, follow, otherEditions, stock } = row
  const lines: FactLine[] = [
    { key: 'dose', what: words.dose, value: <strong>{sayQuantity(dose.value)}</strong>, fact: dose },
    ...(follow ? [{ key: 'follow', what: words.follows, value: sayContent(follow.value), fact: follow }] : []),
    ...otherEditions.map((other) => ({
      key: `${other.edition} ${other.sources.join()}`,
      what: words.others,
      value: fill(words.otherEdition, { dose: sayQuantity(other.value), edition: other.edition }),
      fact: other,
    })),
  ]
  return (
    <article className={drugStyles.row}>
      <h3>{drugById(drugs, row.drug) ? <Link href={hrefOf('formulary', row.drug)}>{row.name}</Link> : row.name}</h3>
      <dl className={drugStyles.about}>
        <dt>{words.routes}</dt>
        <dd>
          {animals(row.species)}: {row.routes.map((route) => routeWords[route]).join(', ')}
        </dd>
        <dt>{words.strength}</dt>
        <dd>{stock ? sayQuantity(stock) : words.ownProduct}</dd>
        <dt>{words.give}</dt>
        <dd>{row.give}</dd>
        <dt>{words.why}</dt>
        <dd>{fill(words.edition, { edition: row.edition, reason: row.reason })}</dd>
      </dl>
      {row.barredBy && (
        <p>
          <strong>{words.barred}</strong>
        </p>
      )}
      <FactTable caption={row.name} lines={lines} />
    </article>
  )
}

export function RulePage({ name }: { readonly name: RuleName }) {
  const { title, lead } = rulesInEnglish[name]
  const lines = name === 'drug-pairs' ? rules['drug-pairs'].map(linesOfPair) : linesOf(rules[name], words.restsOn)
  const told = name === 'calc-formulas' ? lines.map(formulaLine) : lines
  return (
    <SourcesPage title={title} lead={lead} part="protocols" cites={rules[name]}>
      <FactTable caption={title} lines={told} />
    </SourcesPage>
  )
}

/** A formula is told by its sentence: it has no number of its own. */
function formulaLine(line: FactLine): FactLine {
  const sentences: Readonly<Record<string, string>> = calcSentences
  const [, op = ''] = /^\d+ (\w+)/.exec(line.key) ?? []
  return { ...line, value: sentences[op] ?? line.value }
}

function linesOfPair(pair: Interaction, index: number): FactLine {
  const [one, other] = pair.between
  const counts = pair.washouts.map(({ drug, group, value }) =>
    fill(words.pairs.one, { what: drug ?? (group ? groupsInEnglish[group] : ''), time: sayQuantity(value) }),
  )
  return {
    key: String(index),
    what: fill(words.pairs.between, { one: groupsInEnglish[one], other: groupsInEnglish[other] }),
    value: (
      <Sentences
        list={[
          `${words.pairs.levels[pair.level]}: ${pair.because}`,
          ...(counts.length > 0 ? [fill(words.pairs.counts, { list: counts.join(', ') })] : []),
        ]}
        none=""
      />
    ),
    fact: distinct([pair, ...pair.washouts]),
  }
}

function animals(species: readonly Species[]): string {
  return species.map((one) => speciesInEnglish[one]).join(', ')
}

/** The same provenance is marked once. */
function distinct(facts: readonly Provenance[]): Provenance[] {
  const told = new Map(
    facts.map((fact) => [JSON.stringify([fact.sources, fact.where, fact.known, fact.confidence]), fact]),
  )
  return [...told.values()]
}
