import type { Suspicion } from '#core/dosing/emergency-row.ts'
import type { Case } from '#core/journal/fold.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import { isRoomCall, type RoomCall } from './room-call.ts'
import type { Stamp } from './stamps.ts'

/** One emergency of an operation, by the stamps of its beginning and its end. */
export type Shout = {
  readonly call: RoomCall
  /** The how manieth of its call in this operation. */
  readonly number: number
  readonly begun: Stamp
  /** Null as long as it lasts. */
  readonly ended: Stamp | null
}

const pattern = /^emergency-(on|off)-([a-z-]+)-(\d+)$/

/** The checkpoint that the beginning or the end of an emergency is stamped with. Example: `emergency-on-bleeding-1`. */
export function shoutCheckpoint(which: 'on' | 'off', call: RoomCall, number: number): string {
  return `emergency-${which}-${call}-${number}`
}

/** What a checkpoint of an emergency says. Example: `shoutOf('emergency-on-bleeding-1')?.which // 'on'`. */
function shoutOf(
  checkpoint: string,
): { readonly which: 'on' | 'off'; readonly call: RoomCall; readonly number: number } | undefined {
  const [, which, call = '', text] = pattern.exec(checkpoint) ?? []
  return isRoomCall(call) ? { which: which === 'on' ? 'on' : 'off', call, number: Number(text) } : undefined
}

/**
 * Every emergency of an operation in the order of their beginnings. Where two people stamped the same beginning, the
 * clock runs from the first.
 *
 * @example shoutsOf(theCase, operation.id).find(({ ended }) => ended === null)?.call // 'bleeding'
 */
export function shoutsOf(theCase: Case, operation: string): Shout[] {
  const begun = new Map<string, Shout>()
  for (const stamp of linesAbout(theCase, 'theatre-stamp', operation)) {
    const said = shoutOf(stamp.body.checkpoint)
    if (stamp.body.answer !== 'done' || !said) continue
    const { which, call, number } = said
    const key = `${call} ${number}`
    const known = begun.get(key)
    if (which === 'on' && !known) begun.set(key, { call, number, begun: stamp, ended: null })
    if (which === 'off' && known && !known.ended) begun.set(key, { ...known, ended: stamp })
  }
  return [...begun.values()]
}

/** The last emergency of a call, whether it still lasts or is over. */
export function lastShout(shouts: readonly Shout[], call: RoomCall): Shout | undefined {
  return shouts.findLast((one) => one.call === call)
}

/** The number that the next emergency of a call gets. */
export function nextNumber(shouts: readonly Shout[], call: RoomCall): number {
  return Math.max(0, ...shouts.filter((one) => one.call === call).map(({ number }) => number)) + 1
}

/**
 * What must be thought of from then on: a toxicity that was shouted bars its drugs until the tap is taken back, also
 * after it was called over, because the drug is still in the animal.
 */
export function suspectedIn(shouts: readonly Shout[]): Suspicion[] {
  return shouts.some(({ call }) => call === 'local-anaesthetic-toxicity') ? ['local-anaesthetic-toxicity'] : []
}

/** Minutes and seconds between two instants, as a clock shows them. Example: `4:07`. */
export function clockFace(from: string, until: string): string {
  const seconds = Math.max(0, Math.floor((Date.parse(until) - Date.parse(from)) / 1_000))
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`
}
