import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { findingsOfHome, type HomeFinding, onceEach, openOfHome } from '#core/dosing/flag-home.ts'
import { confirmedHome } from '#core/dosing/home-confirmed.ts'
import { type HomeDraft, type HomePlan, homePlanOf, homePlanWith } from '#core/home/home-plan.ts'
import type { CaseFile } from '#core/journal/clinic.ts'

/** The same for every paper and screen, so that what a person confirmed is what the page for home asks about. */
const knowledge = { drugs: formulary, rules: dosingRules, plans: [], policies: [] }

/** What is found about the page for home as it stands, and who confirmed it; null when no animal went home. */
export function homeChecksOf({ theCase, clinic }: CaseFile) {
  const plan = homePlanOf(theCase)
  if (!plan) return null
  const findings = onceEach(findingsOfHome(theCase, plan, clinic.zone, knowledge))
  return { plan, findings, confirmed: confirmedHome(theCase, plan, findings) }
}

/** The findings that still wait for a person, each with its medicine. */
export function openHomeOf({ theCase, clinic }: CaseFile): readonly HomeFinding[] {
  const plan: HomePlan | null = homePlanOf(theCase)
  return plan ? openOfHome(theCase, plan, clinic.zone, knowledge) : []
}

/** What would be found if an entry that is still being written were kept. */
export function homeChecksWith({ theCase, clinic }: CaseFile, draft: HomeDraft) {
  const plan = homePlanWith(theCase, draft)
  return plan ? onceEach(findingsOfHome(theCase, plan, clinic.zone, knowledge)) : []
}
