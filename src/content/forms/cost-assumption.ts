import type { FormArrangement } from '#core/forms/arrangement.ts'

/** What a year of an option was reckoned from; it is made and changed on the worksheet of the choice. */
export const costAssumption = {
  kind: 'cost-assumption',
  place: 'case',
  chapters: ['Choice'],
  writtenBy: ['surgeon', 'nurse', 'desk', 'manager', 'anaesthetist'],
  amendable: false,
  sections: [{ id: 'cost', fields: ['option', 'lines'] }],
  fields: { 'lines.price': { blank: 'none' }, option: { control: 'select' } },
} as const satisfies FormArrangement
