import type { Entry, Envelope } from '#core/journal/entry.ts'
import type { World } from '../action.ts'
import type { Session } from './accounts.ts'
import { hashOf } from './caller.ts'

/**
 * Tells of each entry whether it was written at this device after its author's session there had ended or run out, and
 * before they signed in again. Written before the very first session, as by a device whose clock is slow, is not late.
 */
export async function latenessAt(
  { accounts, door }: Pick<World, 'accounts' | 'door'>,
  clinic: string,
  device: string,
  entries: readonly Entry[],
): Promise<(entry: Entry) => Envelope['late']> {
  const here = door.token === null ? undefined : await accounts.byToken(hashOf(door.token))
  // Almost every entry was written within the session that brings it; only for others the device's past is read.
  const inTime = here !== undefined && entries.every((entry) => timesOf(entry, [here]).some(holds(entry)))
  const sessions = inTime ? [here] : await accounts.ofDevice(clinic, device)
  return (entry) => {
    const times = timesOf(entry, sessions)
    if (times.some(holds(entry))) return null
    return times.some(({ to }) => to <= writtenAt(entry)) ? 'session-expired' : null
  }
}

type Time = { readonly from: string; readonly to: string }

/** When the author was signed in there. */
function timesOf({ author }: Entry, sessions: readonly Session[]): Time[] {
  if (author.kind !== 'person') return []
  return sessions.flatMap(({ people, endedAt, expiresAt }) =>
    people
      .filter(({ person }) => person === author.person)
      .map(({ since, until }) => {
        const [to = expiresAt] = [until, endedAt, expiresAt].filter((end) => end !== null).sort()
        return { from: since, to }
      }),
  )
}

function holds(entry: Entry): (time: Time) => boolean {
  const at = writtenAt(entry)
  return ({ from, to }) => from <= at && at < to
}

/** By the server's clock, where the device has measured it. */
function writtenAt({ writtenAt, device }: Entry): string {
  return new Date(Date.parse(writtenAt) + (device.offset?.ms ?? 0)).toISOString()
}
