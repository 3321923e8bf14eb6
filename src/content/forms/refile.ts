import type { FormArrangement } from '#core/forms/arrangement.ts'

/** An entry stood with the wrong animal. */
export const refile = {
  kind: 'refile',
  place: 'correction',
  chapters: [],
  writtenBy: ['nurse', 'desk', 'surgeon'],
  amendable: false,
  sections: [{ id: 'right-place', fields: ['toStream', 'toSubject', 'copy'] }],
  fields: { toStream: { register: 'case' }, copy: { entries: [] } },
} as const satisfies FormArrangement
