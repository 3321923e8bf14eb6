import type { OwnFiguresAnswer } from '#actions/evidence/read-own-figures.ts'
import { resultsInEnglish } from '#content/wording/app-results.ts'
import { reasonGroupNames } from '#content/wording/main-reasons.ts'
import { fill } from '#core/outcome/finding.ts'
import { CountList } from './count-list.tsx'
import { rowsOfCounts } from './own-counts.ts'
import { RateChart } from './rate-chart.tsx'
import styles from './results.module.css'

type Groups = OwnFiguresAnswer['byReason']
type Tracts = OwnFiguresAnswer['times'][number]['reasons']

const { reasons: words } = resultsInEnglish

/** The ears by what they were operated for: each reason with its own counts, then late tracts compared over time. */
export function ByReason(props: {
  readonly of: string
  readonly groups: Groups
  readonly tracts: Tracts | undefined
  readonly shownFrom: number
}) {
  const { of, groups, tracts, shownFrom } = props
  if (groups.length === 0) return null
  const nobodySaid = groups.every(({ reason }) => reason === 'not-recorded')
  return (
    <>
      <h3>{words.title}</h3>
      <p className="soft">{nobodySaid ? words.none : words.lead}</p>
      {!nobodySaid &&
        groups.map(({ reason, ears, counts }) => {
          const label = fill(words.list, { of, reason: reasonGroupNames[reason] })
          return (
            <details key={reason}>
              <summary>{fill(words.of, { reason: capital(reasonGroupNames[reason]), ears: String(ears) })}</summary>
              <CountList label={label} counts={[...counts]} reason={reason} approved={null} shownFrom={shownFrom} />
              <RateChart caption={label} rows={rowsOfCounts([...counts])} shownFrom={shownFrom} />
            </details>
          )
        })}
      {!nobodySaid && tracts && (
        <>
          <h4 className={styles.part}>{words.tracts}</h4>
          {saidOf(tracts, shownFrom).map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </>
      )}
    </>
  )
}

function saidOf(tracts: Tracts, least: number): string[] {
  const about = { least: String(least) }
  const named = ({ reason, ears, events }: Tracts['compared'][number]) => ({
    reason: capital(reasonGroupNames[reason]),
    ears: String(ears),
    events: String(events),
  })
  const groups = tracts.tooFew.map((one) =>
    fill(words.group, { reason: reasonGroupNames[one.reason], ears: String(one.ears) }),
  )
  return [
    ...tracts.compared.map((one) => fill(words.compared, named(one))),
    ...resultOf(tracts, about),
    ...(groups.length > 0 && tracts.kind !== 'fewer-than-two'
      ? [fill(words.tooFew, { ...about, groups: groups.join('; ') })]
      : []),
  ]
}

function resultOf(tracts: Tracts, about: { readonly least: string }): string[] {
  switch (tracts.kind) {
    case 'fewer-than-two':
      return [fill(words.fewerThanTwo, about)]
    case 'no-event':
      return [words.noEvent]
    case 'compared-over-time': {
      const { chiSquare, degrees, p } = tracts
      const said = fill(words.log, {
        strength: p < 0.05 ? words.strengths.large : words.strengths.small,
        chisq: chiSquare.toFixed(2),
        df: String(degrees),
        p: p < 0.001 ? '< 0.001' : p.toFixed(3),
      })
      return [said, words.lot]
    }
  }
}

function capital(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`
}
