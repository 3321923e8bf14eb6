import { attachmentRefusals } from '#content/wording/attachments.ts'
import { hashBytes } from '#core/journal/canonical.ts'
import { stripLocation } from '#core/journal/strip-location.ts'
import { fill } from '#core/outcome/finding.ts'
import { InputError } from '../input.ts'
import type { Store } from '../store.ts'

export const largestFile = 40 * 1024 * 1024

/**
 * Takes a picture or paper in: location data is taken out first, then it is named by the hash of what is left.
 * The entry that refers to it may have arrived before.
 */
export async function attachFile(
  input: { readonly clinic: string; readonly mediaType: string; readonly bytes: Uint8Array },
  { store }: { readonly store: Store },
): Promise<{ readonly hash: string; readonly bytes: number }> {
  const { clinic, mediaType, bytes } = input
  if (bytes.length === 0) throw new InputError('empty', 'bytes', 'The file is empty; send it again.')
  if (bytes.length > largestFile)
    throw new InputError('too-large', 'bytes', 'The file is larger than 40 MiB; send a smaller picture.')
  const clean = stripLocation(bytes, mediaType)
  if (clean.kind === 'refusal') {
    const { because } = clean.refusal
    throw new InputError(because, 'mediaType', fill(attachmentRefusals[because], { mediaType }))
  }
  const hash = hashBytes(clean.answer)
  await store.putFile(clinic, hash, mediaType, clean.answer)
  return { hash, bytes: clean.answer.length }
}
