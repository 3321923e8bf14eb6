import { useDeferredValue } from 'react'
import { lateSignRules } from '#content/follow-up/late-signs.ts'
import type { LateSign } from '#core/late/late-sign-names.ts'
import { lateSignsIn } from '#core/late/late-signs.ts'
import { type FirstCall, saidInCall, toldInCall } from '#core/referral/first-call.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { type IndexEars, lookFor, useIndexEars, type Wanted } from '../../late/use-index-ears.ts'

/** The late signs heard in a call, and the operated ears to which they may belong. */
export type LateHere = { readonly signs: readonly LateSign[]; readonly ears: IndexEars; readonly today: string }

/** `same`: the file that the person said is this animal. */
export function useLate(call: FirstCall, same: string | null, zone: string): LateHere {
  const about = useDeferredValue(JSON.stringify(wantedOf(call, same, zone)))
  const wanted = JSON.parse(about) as ReturnType<typeof wantedOf>
  const ears = useIndexEars(wanted.ask)
  return { signs: wanted.signs, ears: toOffer(ears, wanted.signs, call), today: wanted.today }
}

/** The same once more, for what was typed in the last moment before the call is kept. */
export async function lookAgain(call: FirstCall, same: string | null, zone: string): Promise<LateHere> {
  const { ask, signs, today } = wantedOf(call, same, zone)
  const ears: IndexEars = ask === null ? { kind: 'nothing' } : await lookFor(ask)
  return { signs, today, ears: toOffer(ears, signs, call) }
}

function wantedOf(call: FirstCall, same: string | null, zone: string) {
  const signs = lateSignsIn(saidInCall(call), lateSignRules)
  const today = dayOf({ at: new Date().toISOString(), zone })
  const told = signs.length === 0 ? null : toldInCall(call, zone, today)
  const ask: Wanted | null = told && { ...told, stream: same }
  return { signs, today, ask }
}

/**
 * The ears of a file that the person said is another animal are not offered. That nobody could look is said where a late sign
 * was heard, and not at every complaint that is written without the server.
 */
function toOffer(ears: IndexEars, signs: readonly LateSign[], call: FirstCall): IndexEars {
  const isHeard = signs.some((sign) => sign !== 'complaint')
  if (ears.kind === 'away' && !isHeard) return { kind: 'nothing' }
  if (ears.kind !== 'found') return ears
  return { ...ears, ears: ears.ears.filter(({ stream }) => call.matches[stream]?.answer !== 'another') }
}
