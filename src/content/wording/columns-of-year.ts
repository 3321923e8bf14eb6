import { reasonGroups } from '#core/animal/main-reason.ts'
import { ownOutcomes } from '#core/evidence/own/own-outcome.ts'
import { type ColumnWords, whichOperation } from './columns-of-ears.ts'

const share = { unit: 'share from 0 to 1', values: 'decimal; empty where no share is said' }
const count = { unit: '', values: 'whole number' }

/** The counts of a yearly report: one row for one outcome of one operation in one species, counted one way. */
export const columnsOfYear: readonly ColumnWords[] = [
  { column: 'year', means: 'Calendar year of the operations.', unit: 'calendar year', values: 'four digits' },
  {
    column: 'looked_at',
    means: 'The day on which it was looked at what is known.',
    unit: 'day',
    values: 'like 2026-11-30',
  },
  ...whichOperation,
  {
    column: 'unit',
    means: 'What counts once: an ear; an animal with both its ears; both ears under one anaesthetic.',
    unit: '',
    values: 'ear, animal, procedure',
  },
  { column: 'outcome', means: 'What is counted.', unit: '', values: ownOutcomes.join(', ') },
  { column: 'events', means: 'Of the known: had it.', ...count },
  { column: 'known', means: 'Due, and known whether they had it.', ...count },
  { column: 'not_known', means: 'Due, and not known; never taken as no.', ...count },
  { column: 'died_of_not_known', means: 'Of those not known: died before it could be known.', ...count },
  { column: 'not_due', means: 'Their time had not come on the day of looking.', ...count },
  { column: 'not_due_with_event', means: 'Of those not due: had it already.', ...count },
  {
    column: 'said',
    means: 'What is said of the share.',
    unit: '',
    values: 'shown; withheld (too few known); none-yet (see up_to); nobody (nobody known)',
  },
  { column: 'share', means: 'Events of known.', ...share },
  { column: 'exact_low', means: 'Lower end of the exact 95 % interval (Clopper and Pearson).', ...share },
  { column: 'exact_high', means: 'Upper end of it.', ...share },
  { column: 'wilson_low', means: 'Lower end of the 95 % interval of Wilson.', ...share },
  { column: 'wilson_high', means: 'Upper end of it.', ...share },
  { column: 'across_low', means: 'Lower end with two ears of one animal taken as tied; only by ears.', ...share },
  { column: 'across_high', means: 'Upper end of it.', ...share },
  { column: 'if_none_of_not_known', means: 'The share if none of those not known had it.', ...share },
  { column: 'if_all_of_not_known', means: 'The share if all of those not known had it.', ...share },
  { column: 'up_to', means: 'While nobody known had it: how high the true share could still be.', ...share },
  { column: 'method', means: 'Version of the method.', unit: '', values: 'text' },
  { column: 'data_sha256', means: 'Hash of the frozen data.', unit: '', values: '64 hexadecimal digits' },
]

/** The same from method 2 on: ears also by what they were operated for. */
export const columnsOfYearByReason: readonly ColumnWords[] = columnsOfYear.flatMap((one) =>
  one.column === 'outcome'
    ? [
        {
          column: 'reason',
          means: 'What the ears were operated for, as the signed summary says; all: whatever it was.',
          unit: '',
          values: ['all', ...reasonGroups].join(', '),
        },
        one,
      ]
    : [one],
)
