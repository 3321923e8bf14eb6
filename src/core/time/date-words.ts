/** How one language says a day: the month is always a word, so that day and month cannot swap. */
export type DateWords = {
  /** January first. */
  readonly months: readonly [
    string,
    string,
    string,
    string,
    string,
    string,
    string,
    string,
    string,
    string,
    string,
    string,
  ]
  /** Holds {month} and {year}. */
  readonly month: string
  /** Holds {day}, {month} and {year}. */
  readonly day: string
  /** Holds {day}, {month}, {year} and {time}. */
  readonly minute: string
  /** Without its year, for a course of a few weeks: holds {day} and {month}. */
  readonly dayOfYear: string
}

export const datesInEnglish = {
  months: [
    'January',
    'February',
    'March',
    'April',
    'May',
    'June',
    'July',
    'August',
    'September',
    'October',
    'November',
    'December',
  ],
  month: '{month} {year}',
  day: '{day} {month} {year}',
  minute: '{day} {month} {year}, {time}',
  dayOfYear: '{day} {month}',
} as const satisfies DateWords
