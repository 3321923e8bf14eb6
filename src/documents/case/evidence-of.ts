import { ownCounting } from '#content/evidence/own-counting.ts'
import { evidenceRules } from '#content/evidence/prior.ts'
import { quoted } from '#content/evidence/quoted.ts'
import { studies } from '#content/studies/index.ts'
import { ownOfHouse } from '#core/evidence/own/approved.ts'
import { ownRulesOf } from '#core/evidence/own/own-rules.ts'
import type { toldOf } from '#core/evidence/told.ts'
import type { Case } from '#core/journal/fold.ts'

export type Evidence = Parameters<typeof toldOf>[1]

/**
 * Everything that odds are told from in one house: the published studies, and our own counts as they were last approved.
 *
 * @example toldOf(question, evidenceOf(file.house))
 */
export function evidenceOf(house: Case): Evidence {
  const shownFrom = ownRulesOf(house, ownCounting).shownFrom.value
  return { studies, ownOf: ownOfHouse(house), rules: evidenceRules, shownFrom, quoted }
}

/** The published studies alone, for pages that speak of no house. */
export const publishedEvidence: Evidence = {
  studies,
  ownOf: () => null,
  rules: evidenceRules,
  shownFrom: ownCounting.shownFrom.value,
  quoted,
}
