import type { Source } from '#core/evidence/sourced.ts'

export const catSurfaceWebPage = {
  id: 'cat-surface-web-page',
  citation: 'One web page on body surface that prints K 10.4 for the cat; its address was not kept',
  seenAt: 'web page, address not kept',
  strength: 'web',
} as const satisfies Source
