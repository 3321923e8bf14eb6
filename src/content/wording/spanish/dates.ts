import type { DateWords } from '#core/time/date-words.ts'

/** Days and months in Spanish: the month is a word here too, so that day and month cannot swap. */
export const datesInSpanish = {
  months: [
    'enero',
    'febrero',
    'marzo',
    'abril',
    'mayo',
    'junio',
    'julio',
    'agosto',
    'septiembre',
    'octubre',
    'noviembre',
    'diciembre',
  ],
  month: '{month} de {year}',
  day: '{day} de {month} de {year}',
  minute: '{day} de {month} de {year}, {time}',
  dayOfYear: '{day} de {month}',
} as const satisfies DateWords
