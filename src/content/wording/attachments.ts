import type { StripRefusal } from '#core/journal/strip-location.ts'

/** What to do when a picture or paper cannot be taken in. */
export const attachmentRefusals: Record<StripRefusal['because'], string> = {
  'not-what-it-says': 'The file is not a whole {mediaType}; send it again, or save it once more as JPEG.',
  'cannot-strip':
    'Files of kind {mediaType} may carry the place where they were made and cannot be cleaned here; save it as JPEG or PNG.',
}
