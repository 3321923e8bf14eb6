import { hashBytes } from '#core/journal/canonical.ts'
import type { Entry } from '#core/journal/entry.ts'
import { mediaTypeOf } from '#core/journal/media-type.ts'
import { type StripRefusal, stripLocation } from '#core/journal/strip-location.ts'
import { answer, type Outcome, refuse } from '#core/outcome/outcome.ts'
import { database } from './database.ts'
import { outbox } from './outbox.ts'

export type Attachment = Entry['attachments'][number]
export type FileRefusal = StripRefusal | { readonly because: 'too-large' | 'empty'; readonly mediaType: string }

/** The server takes no more. */
const largest = 40 * 1024 * 1024
const longestName = 200

/**
 * Takes a file in on this device: the place it was made is taken out, as the server does, so that both name it by the
 * same hash. Its bytes stay here until they were sent.
 */
export async function takeInFile(file: File): Promise<Outcome<Attachment, FileRefusal>> {
  const whole = new Uint8Array(await file.arrayBuffer())
  const mediaType = mediaTypeOf(whole, file.type)
  if (whole.length === 0) return refuse({ because: 'empty', mediaType })
  if (whole.length > largest) return refuse({ because: 'too-large', mediaType })
  const clean = stripLocation(whole, mediaType)
  if (clean.kind === 'refusal') return clean
  const hash = hashBytes(clean.answer)
  const bytes = new Blob([clean.answer as Uint8Array<ArrayBuffer>], { type: mediaType })
  const tx = (await database()).transaction('files', 'readwrite', { durability: 'strict' })
  await tx.store.put({ bytes, mediaType }, hash)
  await tx.done
  return answer({
    hash,
    mediaType,
    bytes: clean.answer.length,
    name: file.name.slice(0, longestName) || hash.slice(0, 8),
  })
}

/** A file of a draft that was given up; one that an unsent entry names is left alone. */
export async function letFileGo(hash: string): Promise<void> {
  if (outbox.get().some(({ entry }) => entry.attachments.some((file) => file.hash === hash))) return
  await (await database()).delete('files', hash)
}
