import { watchedOutcomes, watching } from '#content/evidence/watching.ts'
import { countedGroups, type OwnQuestion } from '#core/evidence/own/count-own.ts'
import type { OperatedEar } from '#core/evidence/own/operated-ear.ts'
import type { OwnCountingRules, OwnOutcome } from '#core/evidence/own/own-outcome.ts'
import { publishedFor } from '#core/evidence/published.ts'
import { countUnits } from '#core/evidence/study.ts'
import { middleOf, toldOf } from '#core/evidence/told.ts'
import { type Watch, watchOf } from '#core/results/watch.ts'
import { publishedEvidence } from '#documents/case/evidence-of.ts'

type Of = Pick<OperatedEar, 'species' | 'procedure'>

/** What is watched of one operation in one species, in the unit in which studies counted it, and what they let expect. */
export function watchedQuestions(of: Of): { readonly question: OwnQuestion; readonly expected: number | null }[] {
  return watchedOutcomes.map((outcome) => {
    const question = { ...of, outcome, unit: unitOf(of, outcome) }
    return { question, expected: expectedOf(question) }
  })
}

/** Every watched outcome of one operation in one species, in the unit in which studies counted it. */
export function watchedOf(of: Of, ears: readonly OperatedEar[], today: string, rules: OwnCountingRules): Watch[] {
  return watchedOutcomes.map((outcome) => {
    const question = { ...of, outcome, unit: unitOf(of, outcome) }
    return watchOf(question, countedGroups(question, ears, today, rules), () => expectedOf(question), watching)
  })
}

/** Ears first; where no study counted ears, the unit that one did. */
function unitOf(of: Of, outcome: OwnOutcome) {
  const usable = (unit: (typeof countUnits)[number]) => {
    const { kind } = publishedFor({ ...of, outcome, unit }, publishedEvidence.studies)
    return kind === 'one-study' || kind === 'several-studies'
  }
  return countUnits.find(usable) ?? 'ear'
}

/** What the studies alone let a new clinic expect: never what our own ears said, which are the ones watched. */
function expectedOf(question: Watch['question']): number | null {
  const { expected } = toldOf(question, { ...publishedEvidence, ownOf: () => null })
  return expected ? middleOf(expected.predictive.distribution).mean : null
}
