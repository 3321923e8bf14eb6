import type { FormArrangement } from '#core/forms/arrangement.ts'

/** Somebody read a result and decided. */
export const resultRead = {
  kind: 'result-read',
  place: 'case',
  chapters: ['Work-up', 'Home', 'Year'],
  writtenBy: ['surgeon', 'anaesthetist'],
  amendable: true,
  sections: [{ id: 'decision', fields: ['result', 'decision', 'edition', 'text'] }],
  fields: { result: { entries: ['specimen-result'] } },
} as const satisfies FormArrangement
