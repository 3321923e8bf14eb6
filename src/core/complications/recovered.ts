import type { OwnCase } from '#core/evidence/own/own-case.ts'
import type { Sighting } from './sighting.ts'
import type { TroubleEvent } from './trouble-codes.ts'

type Check = OwnCase['checks'][number]['body']

const woundEvents: readonly TroubleEvent[] = ['wound-gap', 'seroma', 'wound-infection', 'pinna-edge']

/**
 * Whether the last check after the last sighting found the part as it was: a wound closed, a face that blinks. Null where
 * no such check looked at it. Silence is no recovery.
 *
 * @example hasRecovered(ownCase, 'wound-gap', sightings) // true
 */
export function hasRecovered(own: OwnCase, event: TroubleEvent, sightings: readonly Sighting[]): boolean | null {
  const lastSeen =
    sightings
      .map(({ at }) => at.at)
      .sort()
      .at(-1) ?? ''
  const later = own.checks.filter(({ at }) => at > lastSeen).map(({ body }) => isWell(event, body))
  return later.findLast((well) => well !== null) ?? null
}

function isWell(event: TroubleEvent, body: Check): boolean | null {
  if (woundEvents.includes(event)) return body.wound === 'not-assessed' ? null : body.wound === 'closed'
  switch (event) {
    case 'facial-weakness':
      return body.possibleBlockEffect || body.blink === 'not-assessed' || body.lipOrEarDroop === 'not-assessed'
        ? null
        : body.blink === 'normal' && body.lipOrEarDroop === 'no'
    case 'horner':
      return body.horner === 'not-assessed' ? null : body.horner === 'no'
    case 'vestibular':
      return balanceIsWell(body)
    case 'corneal-ulcer':
      return body.fluorescein === 'not-assessed' ? null : body.fluorescein === 'negative'
    default:
      return null
  }
}

/** One sign that is there is enough; well only where all three were looked at. */
function balanceIsWell({ headTilt, nystagmus, unsteady }: Check): boolean | null {
  const signs = [headTilt, nystagmus, unsteady]
  if (signs.includes('yes')) return false
  return signs.includes('not-assessed') ? null : true
}
