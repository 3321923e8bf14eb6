import type { ColumnWords } from './columns-of-ears.ts'

/** Every entry of a case, one row each: the columns of timeline.csv, in their order. */
export const columnsOfTimeline = [
  {
    column: 'happened_at',
    means: 'When it happened, on the wall clock of its zone, corrected by the measured offset of the device.',
    unit: 'ISO 8601 date and time with offset',
    values: 'only as fine as the column precision says',
  },
  { column: 'zone', means: 'Time zone in which it happened.', unit: '', values: 'IANA name, like Europe/London' },
  {
    column: 'precision',
    means: 'How finely the time is known.',
    unit: '',
    values: 'year, month, day, minute, second',
  },
  {
    column: 'order_certain',
    means: 'Whether the order is sure; no where the clock of a device was never measured.',
    unit: '',
    values: 'yes, no',
  },
  { column: 'kind', means: 'Kind of the entry.', unit: '', values: 'a name of the journal, like weight' },
  {
    column: 'subject',
    means: 'What the entry is about.',
    unit: '',
    values: 'clinic, household, animal, ear, operation',
  },
  {
    column: 'side',
    means: 'Side of the ear, where the entry is about one ear.',
    unit: '',
    values: 'LEFT, RIGHT, or empty',
  },
  {
    column: 'state',
    means: 'Whether the entry counts, was corrected by a later one, or was withdrawn.',
    unit: '',
    values: 'live, superseded, withdrawn',
  },
  {
    column: 'late',
    means: 'Why the entry counts as late.',
    unit: '',
    values: 'session-expired, operation-finished, written-later, or empty',
  },
  {
    column: 'written_at',
    means: 'When the entry was written, by the clock of the device.',
    unit: 'ISO 8601 date and time in UTC',
    values: '',
  },
  {
    column: 'author',
    means: 'Who wrote it: id of a person or contact, or where it was imported from.',
    unit: '',
    values: 'an id of the registers',
  },
  { column: 'entry', means: 'Id of the entry, for life.', unit: '', values: 'UUID' },
  {
    column: 'body',
    means: 'What was written, whole; every quantity carries its own unit beside its value. Empty: erased.',
    unit: 'named inside',
    values: 'JSON in canonical form (RFC 8785)',
  },
] as const satisfies readonly ColumnWords[]
