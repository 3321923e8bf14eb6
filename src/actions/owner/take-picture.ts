import { ownerNoteLimits } from '#content/follow-up/owner-note-limits.ts'
import type { World } from '../action.ts'
import { InputError } from '../input.ts'
import { attachFile } from '../journal/attach-file.ts'
import { countTry } from '../people/tries.ts'
import type { OpenedLink } from './open-owner-link.ts'

export const ownerPictureTypes = ['image/jpeg', 'image/png', 'image/webp'] as const
export const largestOwnerPicture = ownerNoteLimits.pictureMegabytes.value * 1024 * 1024

export type PictureOutcome =
  | { readonly kind: 'taken'; readonly hash: string }
  | { readonly kind: 'refused'; readonly because: 'picture-large' | 'picture-kind' }

/**
 * Takes a picture of an owner in, without the place where it was taken, before the note that names it. The same bytes
 * are the same picture: sent again after a broken connection nothing is doubled. Throws the refusal of too many.
 */
export async function takePicture(
  { link }: OpenedLink,
  { mediaType, bytes }: { readonly mediaType: string; readonly bytes: Uint8Array },
  world: Pick<World, 'store' | 'accounts' | 'clock'>,
): Promise<PictureOutcome> {
  if (bytes.length > largestOwnerPicture) return { kind: 'refused', because: 'picture-large' }
  if (!ownerPictureTypes.some((type) => type === mediaType)) return { kind: 'refused', because: 'picture-kind' }
  await countTry(world, `owner-picture link ${link.id}`, delayOfPictures)
  try {
    const { hash } = await attachFile({ clinic: link.clinic, mediaType, bytes }, world)
    return { kind: 'taken', hash }
  } catch (error) {
    if (error instanceof InputError) return { kind: 'refused', because: 'picture-kind' }
    throw error
  }
}

/** So many at once are free, then one a minute. */
function delayOfPictures(taken: number): number {
  return taken < ownerNoteLimits.picturesAtOnce.value ? 0 : 60_000
}
