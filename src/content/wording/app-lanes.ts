import type { LaneWording } from '#core/chapters/lane-words.ts'
import { kindsInEnglish } from './app-kinds.ts'

/** The two lanes of time, in English. */
export const lanesInEnglish = {
  lanes: { LEFT: 'LEFT', RIGHT: 'RIGHT', animal: 'the animal as a whole' },
  kinds: kindsInEnglish,
  unknownKind: 'an entry of a newer program ({kind})',
  one: { minutes: '1 minute', hours: '1 hour', days: '1 day', weeks: '1 week', months: '1 month', years: '1 year' },
  many: {
    minutes: '{count} minutes',
    hours: '{count} hours',
    days: '{count} days',
    weeks: '{count} weeks',
    months: '{count} months',
    years: '{count} years',
  },
  entry: '{when}, {lane}: {what}',
  gap: '{length} without an entry',
} as const satisfies LaneWording

/** What stands around the lanes on the page. */
export const lanesPageInEnglish = {
  title: 'The course in time',
  scale: 'Not to one scale: each chapter has room of its own, and long gaps are drawn short with their length.',
  bundle: '{count} entries',
  list: 'The same as a list',
  conflict: 'entries stand side by side here',
  orderUncertain: 'order in time uncertain',
} as const
