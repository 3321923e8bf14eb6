import { drugPage as words } from '#content/wording/app-sources.ts'
import type { Sourced } from '#core/evidence/sourced.ts'
import type { DoseRange, DoseRow } from '#core/formulary/drug.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayContent } from '#documents/sources/say-content.ts'
import { Provenance } from '../../design/provenance.tsx'
import styles from './ranges.module.css'

type Told = Sourced<DoseRange & { readonly words?: string }>

/** The range of a row; where sources disagree, all of them side by side on one scale. */
export function Ranges({ row }: { readonly row: DoseRow }) {
  const others = row.otherRanges ?? []
  if (others.length === 0) return <OneRange row={row} />
  const all: readonly Told[] = [row.range, ...others]
  const unit = row.range.value.low.unit
  const drawn = all.every(({ value }) => value.low.unit === unit)
  const most = drawn ? Math.max(...all.map(({ value }) => value.high.value.toNumber())) : 0
  return (
    <div className={styles.disagree}>
      <p className={styles.note}>{words.disagree}</p>
      <ul className={`bare ${styles.side}`}>
        {all.map((one, index) => (
          <li key={sayContent(one.value)} className={styles.told} data-used={index === 0}>
            <p>
              <span className={styles.label}>{index === 0 ? words.used : words.notUsed}</span>
              <span className={styles.range}>{sayContent({ low: one.value.low, high: one.value.high })}</span>
            </p>
            {drawn && <RangeLine value={one.value} most={most} />}
            {one.value.words && <p className="soft">{one.value.words}</p>}
            <Provenance fact={one} />
          </li>
        ))}
      </ul>
    </div>
  )
}

/** The same beside a dose that was chosen: the range that is used, the others when opened. */
export function RangesBeside({ row }: { readonly row: DoseRow }) {
  const others = row.otherRanges ?? []
  return (
    <div className={styles.beside}>
      <OneRange row={row} />
      {others.length > 0 && (
        <details>
          <summary className={styles.open}>{fill(words.others, { count: String(others.length) })}</summary>
          <Ranges row={row} />
        </details>
      )}
    </div>
  )
}

function OneRange({ row }: { readonly row: DoseRow }) {
  return (
    <div className={styles.one}>
      <p>
        <span className={styles.label}>{words.range}</span>
        <span className={styles.range}>{sayContent(row.range.value)}</span>
      </p>
      <Provenance fact={row.range} />
    </div>
  )
}

/** The same numbers as a stretch of a line from nought to the highest; drawn, not worked out. */
function RangeLine({ value, most }: { readonly value: DoseRange; readonly most: number }) {
  const at = (dose: DoseRange['low']) => 1 + (dose.value.toNumber() / most) * 198
  const [low, high] = [at(value.low), at(value.high)]
  return (
    <svg viewBox="0 0 200 12" className={styles.line} aria-hidden="true" focusable="false">
      <line x1="1" y1="6" x2="199" y2="6" className={styles.axis} />
      <line x1={low} y1="6" x2={high} y2="6" className={styles.stretch} />
      <line x1={low} y1="1" x2={low} y2="11" className={styles.end} />
      <line x1={high} y1="1" x2={high} y2="11" className={styles.end} />
    </svg>
  )
}
