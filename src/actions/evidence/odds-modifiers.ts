import { modifiers } from '#content/evidence/modifiers.ts'
import { sources } from '#content/sources/index.ts'
import { studies } from '#content/studies/index.ts'
import { oddsCommandInEnglish as words } from '#content/wording/odds-command.ts'
import { cite } from '#core/evidence/cite.ts'
import { modified, modifierFactors, oddsRatioOf } from '#core/evidence/modifier.ts'
import type { Told } from '#core/evidence/told.ts'
import { fill } from '#core/outcome/finding.ts'
import type { ShareDistribution } from '#core/stats/predictive/share-distribution.ts'
import { InputError } from '../input.ts'
import { endsOf, type ModifierAnswer } from './odds-answer.ts'

/** What is published of one circumstance for this outcome: every study, also those that contradict each other. */
export function modifierAnswers(factor: string, { published }: Told, base: ShareDistribution | null): ModifierAnswer[] {
  const { species, procedure, unit, outcome } = published.question
  const known = modifiers.filter(
    (one) =>
      one.factor === factor &&
      one.species === species &&
      one.procedure === procedure &&
      one.unit === unit &&
      one.outcome === outcome,
  )
  const nothing = { factor, ratio: null, interval: null, from: null, share: null, sources: [] }
  if (known.length === 0) return [{ ...nothing, note: words.nothingKnown }]
  return known.map((one): ModifierAnswer => {
    const ratio = oddsRatioOf(one, studies)
    const cited = cite([one], sources)
    if (!ratio) {
      const note = one.effect.kind === 'direction' ? words.direction[one.effect.says] : words.nothingKnown
      return { ...nothing, note, sources: cited }
    }
    const share = base && modified(base, ratio)
    return {
      factor,
      ratio: ratio.value,
      interval: endsOf(ratio.interval),
      from: ratio.from,
      share: share && { mean: share.mean, interval: endsOf(share.interval) },
      note: words.asWithout,
      sources: cited,
    }
  })
}

/** A circumstance nobody knows is a mistake in the input, never silently ignored. */
export function checkFactor(factor: string, at: number): void {
  if (modifierFactors.some((known) => known === factor)) return
  const path = `modifiers[${at}]`
  throw new InputError(
    'unknown-modifier',
    path,
    `${path}: ${fill(words.unknownFactor, { given: factor, list: modifierFactors.join(', ') })}`,
  )
}
