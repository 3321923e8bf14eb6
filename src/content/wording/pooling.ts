import type { PoolNote } from '#core/stats/pooling/pool.ts'

/** What stands beside pooled numbers. */
export const poolNotes: Readonly<Record<PoolNote, string>> = {
  'one-study': 'One study is one study: nothing is pooled, its own exact interval is shown.',
  'two-studies': 'Two studies only: the interval is not to be relied on, and no range for a new clinic can be given.',
  'no-event-anywhere':
    'No study saw the event: there is no pooled figure, only the exact interval of all cases together. That does not mean never.',
  'all-had-the-event':
    'Every case had the event: there is no pooled figure, only the exact interval of all cases together.',
  'studies-of-one-case':
    'Every study is a single case: how far studies differ cannot be told, the exact interval of all cases together is shown.',
  'all-or-none-in-each':
    'In each study either nobody or everybody had the event: the further apart they are taken to be, the better it fits, so no typical study can be named; the exact interval of all cases together is shown.',
  'no-spread-detectable':
    'No difference between the studies beyond chance could be detected. That does not mean there is none.',
  'half-a-case-added':
    'Half a case was added to studies without an event or with nothing but events. With rare events this pulls towards 50 %; compare the binomial-normal method.',
  'taken-back-by-harmonic-mean':
    'The double arcsine is taken back by the harmonic mean of the sizes. The answer depends on that choice and can mislead; use it only for comparison.',
  'typical-not-average': 'The pooled figure is that of a typical study (the median), not the average over studies.',
}

/** The table for people. */
export const poolTable = {
  study: 'study',
  counted: 'events of cases',
  share: 'share',
  interval: '95 % interval',
  without: 'without',
  pooled: 'pooled',
  noPoint: 'no pooled figure',
  sum: 'exact interval',
  prediction: 'a new study: 95 % between {low} and {high}',
  spread: 'tau² {tau2}, I² {i2} (from tau²), Q {q} on {df} df, p = {p}',
  notLeftOut: 'More than {most} studies: leaving each of them out was not worked out.',
} as const
