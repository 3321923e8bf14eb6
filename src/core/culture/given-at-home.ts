import { Temporal } from 'temporal-polyfill'
import type { Given } from '#core/dosing/request.ts'
import { homePlanOf } from '#core/home/home-plan.ts'
import { medicineTimes } from '#core/home/medicine-times.ts'
import type { Case } from '#core/journal/fold.ts'

/**
 * What the animal swallows at home, as far as the home page says: of each medicine the last dose that was due by then.
 * An antibiotic that is chosen today meets it, and nobody writes down a dose that an owner gives.
 *
 * @example givenAtHome(theCase, now, 'Europe/London').map(({ drug }) => drug) // ['meloxicam']
 */
export function givenAtHome(theCase: Case, at: string, zone: string): Given[] {
  const courses = homePlanOf(theCase)?.courses ?? []
  return courses
    .filter(({ form }) => form === 'tablet' || form === 'liquid')
    .flatMap((course) => {
      const last = medicineTimes(course, zone).doses.findLast((dose) => dose.at <= at)
      return last ? [{ drug: course.drug, route: 'PO' as const, at: Temporal.Instant.from(last.at) }] : []
    })
}
