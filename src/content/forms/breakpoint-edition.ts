import type { FormArrangement } from '#core/forms/arrangement.ts'

/** Loaded from its file on the page of breakpoints in the settings; never typed. */
export const breakpointEdition = {
  kind: 'breakpoint-edition',
  place: 'clinic',
  chapters: [],
  writtenBy: ['surgeon'],
  amendable: false,
  sections: [{ id: 'edition', fields: ['standard', 'edition', 'year', 'convention', 'audience', 'from', 'rows'] }],
} as const satisfies FormArrangement
