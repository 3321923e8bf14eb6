import { studies } from '#content/studies/index.ts'
import { outcomeTitles } from '#content/wording/app-outcomes.ts'
import { modifiersInEnglish as words } from '#content/wording/modifiers.ts'
import { oddsInEnglish } from '#content/wording/odds.ts'
import { type Modifier, oddsRatioOf } from '#core/evidence/modifier.ts'
import { fill } from '#core/outcome/finding.ts'

/** One published circumstance in words, with its ratio and where that came from. */
export function sayModifier(one: Modifier): string {
  const about = {
    factor: words.factors[one.factor],
    outcome: outcomeTitles[one.outcome].toLowerCase(),
    animals: oddsInEnglish.animals[one.species].many,
  }
  if (one.effect.kind === 'direction') return fill(words[one.effect.says], about)
  const ratio = oddsRatioOf(one, studies)
  if (!ratio) return about.factor
  const { low, high } = ratio.interval
  const line = fill(words.line, { ...about, ratio: ratio.value.toFixed(2), low: low.toFixed(2), high: high.toFixed(2) })
  const from = ratio.arms
    ? fill(words.arms, {
        withEvents: String(ratio.arms.with.events),
        withTotal: String(ratio.arms.with.total),
        withoutEvents: String(ratio.arms.without.events),
        withoutTotal: String(ratio.arms.without.total),
      })
    : words.printed
  return `${line}; ${from}; ${low > 1 || high < 1 ? words.clear : words.open}`
}
