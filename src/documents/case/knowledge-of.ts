import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { plansOf, policiesOf } from '#core/dosing/from-journal.ts'
import { ownDefaultsOf, withOwn } from '#core/dosing/own-defaults.ts'
import type { DosingKnowledge } from '#core/dosing/request.ts'
import type { CaseFile } from '#core/journal/clinic.ts'

/** All that the dose engine is told in this clinic. */
export function knowledgeOf({ house, clinic, people }: Pick<CaseFile, 'house' | 'clinic' | 'people'>): DosingKnowledge {
  const shelf = { items: house.live('shelf-item').map(({ body }) => body), zone: clinic.zone }
  const knowledge = { drugs: formulary, rules: dosingRules, plans: plansOf(house), policies: policiesOf(house), shelf }
  return withOwn(knowledge, ownDefaultsOf(house, dosingRules, people))
}
