import { ownerNoteLimits } from '#content/follow-up/owner-note-limits.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import type { World } from '../action.ts'
import { linkedCase } from '../people/linked-case.ts'
import type { OpenedLink } from './open-owner-link.ts'
import { ownerEntry } from './owner-entry.ts'

export type SentNote = {
  /** Made where the note was written: resent under it, a note is kept once. */
  readonly id: string
  readonly body: BodyOf<'owner-note'>
  /** Hashes of pictures that were taken in before. */
  readonly pictures: readonly string[]
}

/** What became of a note; `picture-missing` when one of its pictures has not come, `id` when its id is none or another’s. */
export type NoteOutcome = 'kept' | 'picture-missing' | 'too-many' | 'id'

/**
 * Keeps a note of an owner as an entry of the case, once however often it is sent: whoever sends again from a bad network
 * does not know what came through. What is sent again under an id is what was sent first; other words under it are not
 * kept.
 */
export async function keepNote(
  opened: OpenedLink,
  { id, body, pictures }: SentNote,
  { store }: Pick<World, 'store'>,
): Promise<NoteOutcome> {
  const { link, file, now } = opened
  if (file.theCase.line(id)) return isMine(opened, file, id) ? 'kept' : 'id'
  if (sentSince(opened, before(now)) >= ownerNoteLimits.notesOfADay.value) return 'too-many'
  const attachments: Entry['attachments'] = []
  for (const [at, hash] of pictures.entries()) {
    const kept = await store.file(link.clinic, hash)
    if (!kept?.mediaType.startsWith('image/')) return 'picture-missing'
    const name = `photograph-${at + 1}.${kept.mediaType.slice('image/'.length)}`
    attachments.push({ hash, mediaType: kept.mediaType, bytes: kept.bytes.length, name })
  }
  const entry = ownerEntry(opened, { kind: 'owner-note', id, body, attachments })
  if (!entry) return 'id'
  const [kept] = await store.accept(link.clinic, [entry], now)
  if (kept?.outcome === 'accepted' || kept?.outcome === 'already') return 'kept'
  // The same note may have come twice at once: the other one is in the record now.
  const again = (await linkedCase({ store }, link.clinic, link.stream)).file
  return again && isMine(opened, again, id) ? 'kept' : 'id'
}

function isMine({ link }: OpenedLink, { theCase }: OpenedLink['file'], id: string): boolean {
  const header = theCase.line(id)?.header
  return header?.kind === 'owner-note' && header.author.kind === 'owner-link' && header.author.contact === link.contact
}

function before(now: string): string {
  return new Date(Date.parse(now) - 86_400_000).toISOString()
}

function sentSince({ link, file }: OpenedLink, since: string): number {
  const mine = file.theCase.live('owner-note').filter(({ header: { author } }) => {
    return author.kind === 'owner-link' && author.contact === link.contact
  })
  return mine.filter(({ header }) => header.writtenAt > since).length
}
