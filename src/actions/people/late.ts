import type { Entry, Envelope } from '#core/journal/entry.ts'
import type { Session } from './accounts.ts'

/**
 * Whether an entry was written at this device after its author's session there had ended or run out, and before they
 * signed in again. Written before the very first session, as by a device whose clock is slow, is not late.
 */
export function lateness({ author, writtenAt, device }: Entry, sessions: readonly Session[]): Envelope['late'] {
  if (author.kind !== 'person') return null
  const at = new Date(Date.parse(writtenAt) + (device.offset?.ms ?? 0)).toISOString()
  const times = sessions.flatMap((session) => timesOf(session, author.person))
  if (times.some(({ from, to }) => from <= at && at < to)) return null
  return times.some(({ to }) => to <= at) ? 'session-expired' : null
}

function timesOf({ people, endedAt, expiresAt }: Session, wanted: string) {
  return people
    .filter(({ person }) => person === wanted)
    .map(({ since, until }) => {
      const [to = expiresAt] = [until, endedAt, expiresAt].filter((end) => end !== null).sort()
      return { from: since, to }
    })
}
