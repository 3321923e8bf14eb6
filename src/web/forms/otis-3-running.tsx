import { formsInEnglish } from '#content/wording/app-form-words.ts'
import { otis3SignsInEnglish } from '#content/wording/otis-3.ts'
import type { Draft } from '#core/forms/draft.ts'
import { otis3SoFar } from '#core/forms/otis-3-so-far.ts'
import { fill } from '#core/outcome/finding.ts'
import type { Otis3Sign } from '#core/workup/otis3.ts'
import styles from './forms.module.css'

/** The OTIS-3 total as it grows; it is called the total only when all four signs were graded. */
export function Otis3Running({ draft }: { readonly draft: Draft | undefined }) {
  return (
    <output className={styles.running} aria-live="polite">
      {sayOtis3(draft)}
    </output>
  )
}

function sayOtis3(draft: Draft | undefined): string {
  const soFar = otis3SoFar(draft)
  const words = formsInEnglish.otis3
  if (!soFar) return words.none
  const named = (signs: readonly Otis3Sign[]) => signs.map((sign) => otis3SignsInEnglish[sign]).join(', ')
  const about = { total: String(soFar.graded) }
  if (soFar.open.length > 0) return fill(words.open, { ...about, signs: named(soFar.open) })
  if (soFar.notAssessed.length > 0) return fill(words.unknown, { signs: named(soFar.notAssessed) })
  return fill(words.total, about)
}
