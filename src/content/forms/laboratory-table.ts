import type { FormArrangement } from '#core/forms/arrangement.ts'

/** Written where a table is taken in, with the table before one's eyes; never typed by itself. */
export const laboratoryTable = {
  kind: 'laboratory-table',
  place: 'clinic',
  chapters: [],
  writtenBy: ['nurse', 'desk'],
  amendable: false,
  sections: [{ id: 'table', fields: ['laboratory', 'delimiter', 'columns', 'dates', 'unit', 'comma'] }],
} as const satisfies FormArrangement
