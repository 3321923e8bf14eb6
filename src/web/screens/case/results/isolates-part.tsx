import { Link } from 'wouter'
import { susceptibility } from '#content/susceptibility/index.ts'
import { cultureInEnglish } from '#content/wording/app-culture.ts'
import { categoryWords, choiceStepWords, noChoiceWords } from '#content/wording/culture.ts'
import { agentById } from '#core/culture/agent.ts'
import { editionName } from '#core/culture/edition-name.ts'
import { organismById } from '#core/culture/organism.ts'
import type { ReportReading } from '#core/culture/read-report.ts'
import type { DrugReading, IsolateReading, UsedBreakpoint } from '#core/culture/reading.ts'
import type { StoredIsolate } from '#core/journal/kinds/specimen-result.ts'
import { fill } from '#core/outcome/finding.ts'
import { ColumnHeads } from '../../../design/column-heads.tsx'
import { ScrollBox } from '../../../design/scroll-box.tsx'
import type { Report } from './read-here.ts'
import styles from './results.module.css'
import { sayCultureFinding, sayDrugFlag } from './say-culture.ts'

const words = cultureInEnglish.isolates

/** What grew, isolate by isolate: what it is taken for, what its results together mean, and every value as printed. */
export function IsolatesPart({ report, reading }: { readonly report: Report; readonly reading: ReportReading }) {
  return (
    <section className={styles.part} aria-labelledby="grew">
      <h2 id="grew">{words.title}</h2>
      <p>
        {fill(words.by, { standard: editionName(reading.edition) })} {words.second}{' '}
        <Link href="/sources/breakpoints">{words.sources}</Link>
      </p>
      {reading.laboratory && <Laboratory laboratory={reading.laboratory} />}
      {reading.isolates.map((isolate, place) => (
        <IsolatePart
          key={isolate.key}
          number={String(place + 1)}
          isolate={isolate}
          stored={report.body.isolates.find(({ key }) => key === isolate.key)}
        />
      ))}
    </section>
  )
}

/** Editions are never mixed: the laboratory's own is read whole beside ours, and only where they part is it said. */
function Laboratory({ laboratory }: { readonly laboratory: NonNullable<ReportReading['laboratory']> }) {
  const { edition, differences } = laboratory
  const standard = editionName(edition)
  if (differences.length === 0) return <p>{fill(words.laboratorySame, { standard })}</p>
  return (
    <>
      <p>{fill(words.laboratoryOther, { standard })}</p>
      <ul className={styles.facts}>
        {differences.map(({ key, printed, agent, raw, ours, theirs }) => (
          <li key={`${key} ${agent} ${printed} ${raw}`}>
            {fill(words.difference, {
              number: key,
              drug: printed || (agentById(susceptibility.agents, agent)?.name ?? ''),
              raw,
              theirs: categoryWords[theirs],
              ours: categoryWords[ours],
            })}
          </li>
        ))}
      </ul>
    </>
  )
}

function IsolatePart(props: {
  readonly number: string
  readonly isolate: IsolateReading
  readonly stored: StoredIsolate | undefined
}) {
  const { number, isolate, stored } = props
  const known = organismById(susceptibility.organisms, isolate.organism)
  const amount = stored?.amount ?? null
  return (
    <>
      <h3>
        {fill(words.one, { number, organism: isolate.printed })}
        {known && known.name !== isolate.printed && <span> ({fill(words.readAs, { name: known.name })})</span>}
      </h3>
      {!known && (
        <p>
          <strong>{words.unknown}</strong>
        </p>
      )}
      <p className="soft">{amount === null ? words.noAmount : fill(words.amount, { amount })}</p>
      {amount !== null && /light|scant|broth|few/iu.test(amount) && <p>{words.light}</p>}
      {isolate.findings.length > 0 && (
        <ul className={styles.facts}>
          {isolate.findings.map((finding) => {
            const said = sayCultureFinding(finding)
            return <li key={said}>{said}</li>
          })}
        </ul>
      )}
      <details className={styles.opener}>
        <summary>{words.values}</summary>
        <Values isolate={isolate} />
      </details>
    </>
  )
}

function Values({ isolate }: { readonly isolate: IsolateReading }) {
  const caption = fill(words.caption, { organism: isolate.printed })
  return (
    <ScrollBox label={caption}>
      <table>
        <caption className="said">{caption}</caption>
        <ColumnHeads
          of={(['drug', 'printed', 'theirs', 'ours', 'row'] as const).map((column) => words.columns[column])}
        />
        <tbody>
          {isolate.results.map((row) => (
            <ValueRow key={`${row.agent} ${row.printed} ${row.raw}`} row={row} />
          ))}
        </tbody>
      </table>
    </ScrollBox>
  )
}

function ValueRow({ row }: { readonly row: DrugReading }) {
  const name = agentById(susceptibility.agents, row.agent)?.name
  const changed = row.before !== null && row.before !== row.category
  const category = row.category === 'no_breakpoint' ? words.notRead : row.category
  return (
    <tr>
      <th scope="row">
        {row.printed || name}
        {name === undefined && ` (${words.unknownDrug})`}
      </th>
      <td>{row.raw || words.missing}</td>
      <td>{row.laboratory ?? words.missing}</td>
      <td>
        {changed ? fill(words.changed, { category, before: sayCategory(row.before) }) : category}
        {row.flags.map((flag) => (
          <span key={flag} className={styles.flag}>
            {sayDrugFlag(flag)}
          </span>
        ))}
      </td>
      <td>{row.flags.includes('not-printed') ? words.missing : sayRow(row)}</td>
    </tr>
  )
}

function sayCategory(category: DrugReading['before']): string {
  return category === null || category === 'no_breakpoint' ? words.notRead : category
}

function sayRow({ breakpoint, fallback, none }: DrugReading): string {
  if (breakpoint) return `${sayBreakpoint(breakpoint)}; ${choiceStepWords[breakpoint.step]}`
  const noRow = none ? `${words.noRow}: ${noChoiceWords[none]}` : words.noRow
  if (!fallback) return noRow
  const about = { standard: fallback.breakpoint.standard, category: fallback.category }
  return `${noRow}; ${fill(words.fallbackSaid, about)}`
}

function sayBreakpoint({ standard, host, site, organisms, susceptible, between, resistant }: UsedBreakpoint): string {
  const group = organismById(susceptibility.organisms, organisms)?.name ?? organisms
  return fill(words.rowSaid, {
    standard,
    host,
    site,
    organisms: group,
    susceptible: [susceptible ?? words.missing, ...(between === null ? [] : [between])].join(', '),
    resistant: resistant ?? words.missing,
  })
}
