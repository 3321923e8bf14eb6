export type ScheduleNote =
  | 'weekends-closed'
  | 'finding-right-after'
  | 'finding-before-operation'
  | 'other-side'
  | 'other-species'
  | 'starts-day-after'
  | 'clock-skipped'
  | 'clock-twice'

/** What the schedule took for granted, and what the clocks do to a dose. */
export const scheduleNotes = {
  'weekends-closed': 'Saturday and Sunday count as closed for visits; policy.closedWeekdays says otherwise.',
  'finding-right-after':
    'The findings carry no time (findings.at): they count as found right after operation and block.',
  'finding-before-operation': 'The operation is only booked: findings after it were not read.',
  'other-side': 'Findings of the {side} side were not read: only the operated ear has follow-up here.',
  'other-species': '{name} is not described for this species ({species}).',
  'starts-day-after': '{drug} has no firstDay: it begins the day after the operation, {day}, and runs full days.',
  'clock-skipped':
    '{drug} on {day}: the clocks skip {time}; give it when they show {shown}, the same wait as every night.',
  'clock-twice': '{drug} on {day}: the clocks show {time} twice; give it once, the first time.',
} as const satisfies Record<ScheduleNote, string>
