import type { Edition } from './breakpoint.ts'

/** What a row of a clinic's own copy may be, by whom its edition is made for; the first where the file says nothing. */
export const kindsOfRows = {
  animals: ['clinical', 'human-derived', 'none'],
  people: ['human', 'screen', 'none'],
} as const satisfies Record<Edition['audience'], readonly string[]>

export const ownRowKinds = ['clinical', 'human-derived', 'human', 'screen', 'none'] as const
export const rowHosts = ['dog', 'cat', 'human'] as const
