import { drugById } from '#core/formulary/drug.ts'
import { hoursBetween } from './elapsed.ts'
import { saidOf } from './exclusions.ts'
import { type DoseFinding, found } from './findings.ts'
import { drugsGiven } from './given-drug.ts'
import type { DoseRequest, DosingKnowledge } from './request.ts'
import { nearNames } from './row.ts'

/**
 * What was given without a time counts in full; what is no drug of ours counts in nothing; what is dated after the plan
 * is a slip of one of the two clocks. All are said.
 */
export function unknownGiven(request: DoseRequest, { drugs }: DosingKnowledge): DoseFinding[] {
  const timeless = request.given
    .filter((given) => (!given.at || !request.at) && drugsGiven(drugs, given.drug).length > 0)
    .map((given) => found('note', 'given-time-unknown', { drug: given.drug }))
  const unknown = request.given
    .filter((given) => !given.unsettled && !drugById(drugs, given.drug))
    .map((given) => {
      const read = drugsGiven(drugs, given.drug).map(({ name }) => name)
      if (read.length > 0) {
        return found('confirm', 'given-drug-read-as', { given: saidOf(given), read: read.join(' and ') })
      }
      const near = nearNames(drugs, given.drug).join(', ') || 'none'
      return found('confirm', 'given-drug-unknown', { given: saidOf(given), near })
    })
  const later = request.given
    .filter(({ at, isCoarse }) => !isCoarse && at && request.at && hoursBetween(at, request.at).value.lt(0))
    .map((given) => found('confirm', 'given-from-later', { given: saidOf(given) }))
  return [...unknown, ...later, ...timeless]
}

/** A plan that this house does not have. */
export function unknownPlan(request: DoseRequest, { plans }: DosingKnowledge): DoseFinding[] {
  if (request.plan === undefined || plans.some((plan) => plan.name === request.plan)) return []
  const names = plans.map((plan) => plan.name).join(', ') || 'none'
  return [found('block', 'plan-unknown', { plan: request.plan, plans: names })]
}
