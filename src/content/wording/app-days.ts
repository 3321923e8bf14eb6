/** Days as people say them, in English. */
export const daysInEnglish = {
  weekdays: ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'],
  today: 'today, {day}',
  tomorrow: 'tomorrow, {day}',
  other: '{weekday}, {day}',
} as const
