import { formsInEnglish } from '#content/wording/app-form-words.ts'
import type { Draft } from '#core/forms/draft.ts'
import { estimateSoFar } from '#core/forms/estimate-so-far.ts'
import type { Place } from '#core/forms/refusal.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import styles from './forms.module.css'

const words = formsInEnglish.estimate

/** What an estimate comes to as it grows; a line that cannot be read is in no sum, and that is said. */
export function EstimateRunning({ draft, place }: { readonly draft: Draft | undefined; readonly place: Place }) {
  return (
    <output className={styles.running} aria-live="polite">
      {sayEstimate(draft, place)}
    </output>
  )
}

function sayEstimate(draft: Draft | undefined, place: Place): string {
  const soFar = estimateSoFar(draft, place)
  if (!soFar) return words.none
  const { totals, open, ceiling } = soFar
  const say = ({ amount, currency }: NonNullable<typeof ceiling>) =>
    `${amount.replace('.', place.decimalMark)} ${currency}`
  return [
    totals ? fill(words.total, { low: say(totals.low), high: say(totals.high) }) : words.mixed,
    ...(ceiling ? [fill(words.ceiling, { ceiling: say(ceiling) })] : []),
    ...(open > 0 ? [sayCount(words.open, open)] : []),
  ].join(' ')
}
