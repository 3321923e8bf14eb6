import { bloodMarks } from '#content/protocols/blood-marks.ts'
import { nowInEnglish as words } from '#content/wording/app-now.ts'
import { lossActs } from '#content/wording/emergency.ts'
import type { EmergencySheet } from '#core/dosing/emergency.ts'
import { fill } from '#core/outcome/finding.ts'
import { firedMarks, lossFractions } from '#core/theatre/blood-marks.ts'
import type { LossSoFar } from '#core/theatre/loss-so-far.ts'
import { Decimal, plain } from '#core/units/quantity.ts'
import { wholeVolume } from '#documents/emergency-sheet/say-whole.ts'
import { saySpan } from '../blood.tsx'
import styles from './now/now.module.css'

/** How much blood this animal has, how much of it is gone as a span, and which marks that reaches. */
export function Lost(props: {
  readonly loss: LossSoFar
  readonly sheet: EmergencySheet
  /** Only what is lost and the marks it reached; the rest is one tap away. */
  readonly isShort?: boolean
}) {
  const {
    loss: { sum },
    sheet,
    isShort = false,
  } = props
  const { blood, lossAt } = sheet
  const fired = new Map(
    sum ? firedMarks(sum, blood.counted, bloodMarks).map(({ mark, by }) => [mark.value.code, by]) : [],
  )
  const all = (
    <p className={styles.from}>
      {fill(words.volume, {
        volume: wholeVolume(blood.counted),
        low: wholeVolume(blood.low),
        high: wholeVolume(blood.high),
      })}
    </p>
  )
  const lost = (
    <p className={styles.weight}>
      {sum
        ? fill(words.lost, { span: saySpan(sum), percent: sayPercents(lossFractions(sum, blood.counted)) })
        : words.lostNone}
    </p>
  )
  const marks = (isReached?: boolean) => (
    <ul className="bare">
      {lossAt.map(({ mark, volume }) => {
        const by = fired.get(mark.value.code)
        if (isReached !== undefined && (by !== undefined) !== isReached) return null
        const about = {
          percent: percentOf(new Decimal(mark.value.fraction)),
          volume: wholeVolume(volume),
          act: lossActs[mark.value.code],
        }
        return (
          <li key={mark.value.code} className={styles.from} data-reached={by !== undefined}>
            {fill(words.mark, { ...about, percent: fill(words.percent, about) })}{' '}
            {by && <strong>{by === 'measured' ? words.reached : words.maybe}</strong>}
          </li>
        )
      })}
    </ul>
  )
  if (!isShort) {
    return (
      <>
        {all}
        {lost}
        {marks()}
      </>
    )
  }
  return (
    <>
      {lost}
      {fired.size > 0 && marks(true)}
      <details>
        <summary>{words.furtherMarks}</summary>
        {all}
        {marks(false)}
      </details>
    </>
  )
}

function sayPercents({ atLeast, atMost }: ReturnType<typeof lossFractions>): string {
  const [low, high] = [percentOf(atLeast), percentOf(atMost)]
  return fill(low === high ? words.percent : words.percents, { percent: low, low, high })
}

/** Whole per cent, rounded to the nearest. */
function percentOf(fraction: Decimal): string {
  return plain(fraction.times(100).toDecimalPlaces(0, Decimal.ROUND_HALF_UP))
}
