const remembered = 'remembered'
const confidence = '0 to 1; 0.95 when left out'
const count = '{"events","total"}'
const exposed = '{"events","exposure"}'

/** What each calculation of the command `audit` works out, by which published method, and what it takes. */
export const auditWords = {
  proportion: {
    sentence: 'One share with its intervals; against a fixed share where one is given.',
    method: `Exact: Clopper & Pearson 1934; Wilson 1927; Jeffreys in its boundary form: Brown, Cai & DasGupta 2001 (abstract read, formulas ${remembered}). The one-sided bound is a statement of its own: never beside two-sided ends.`,
    fields: { of: count, confidence, against: 'a share to test against' },
  },
  'event-free': {
    sentence: 'How many cases without a single event exclude a rate so high.',
    method: `Exact, one-sided; Hanley & Lippman-Hand 1983 (${remembered}). It presumes that nobody was lost.`,
    fields: { rate: '0 to 1', confidence },
  },
  difference: {
    sentence: 'How far two shares are apart, and whether chance alone could do it.',
    method: `Newcombe 1998, hybrid score interval; Fisher’s exact test with the conditional odds ratio (${remembered}). null: no end. Groups that were not drawn by lot differ in more than what they are called.`,
    fields: { first: count, second: count, confidence },
  },
  rate: {
    sentence: 'Events per unit of exposure.',
    method: `Exact Poisson interval: Garwood 1936 (${remembered}).`,
    fields: { of: exposed, confidence },
  },
  'rate-ratio': {
    sentence: 'The ratio of two rates.',
    method: 'Exact, given all events together: the first is then binomial. null: no end.',
    fields: { first: exposed, second: exposed, confidence },
  },
  'observed-expected': {
    sentence: 'What was observed over what was expected.',
    method: `Exact Poisson interval (Garwood 1936) and Byar’s approximation (${remembered}). Careful rather than sharp where risks are not small.`,
    fields: { observed: 'a whole number', expected: 'above nought: the sum of the risks', confidence },
  },
  funnel: {
    sentence:
      'Groups of cases against one share, each with the limits of its size. In the order they were brought; no ranking.',
    method: `Exact binomial limits, 95 % and 99.8 %, with the interpolation of Spiegelhalter 2005 (${remembered}); other interpolations move the limits of small groups. Without a target the share of these groups together is used, and the limits are then somewhat too narrow. Groups below the house minimum get none.`,
    fields: {
      by: 'species, procedure, indication or year; never a person',
      groups: '[{"group","events","total"}]',
      target: 'the share to stand against',
    },
  },
  cusum: {
    sentence: 'The chart that watches results in their order; signals are counted from 1.',
    method: `Steiner, Cook, Farewell & Treasure 2000 (abstract read, formula ${remembered}). Risks must come from elsewhere than the cases watched.`,
    fields: {
      cases: '[{"risk","event"}] in their order',
      ratio: 'the odds it looks for, times those expected',
      limit: 'it signals here',
    },
  },
  'false-alarms': {
    sentence:
      'How likely such a chart signals within so many cases: with odds as expected, and with odds that are so many times as high.',
    method: 'Exactly, by recursion over events and non-events since the chart last stood at nought; one risk for all.',
    fields: {
      risk: '0 to 1',
      ratio: 'the odds it looks for, times those expected',
      limit: 'it signals here',
      cases: 'how many',
    },
  },
  'expected-less-observed': {
    sentence: 'The running sum of expected minus observed, with limits at every case.',
    method: `Variable life-adjusted display: Lovegrove et al. 1997 (${remembered}); exact limits, events of unlike risks. Limits hold at one case: the whole line leaves them far more often than one time in twenty.`,
    fields: { cases: '[{"risk","event"}] in their order', confidence },
  },
  agreement: {
    sentence: 'Agreement of two readers beyond chance.',
    method: `Cohen’s kappa, plain and with linear and quadratic weights; errors of Fleiss, Cohen & Everitt 1969 (${remembered}). Rare findings depress it: read the share of agreement beside it.`,
    fields: { table: 'rows: the first reader; columns: the second; how many cases' },
  },
  'many-readers': {
    sentence: 'Agreement of many readers beyond chance.',
    method: `Fleiss 1971 (${remembered}).`,
    fields: { counts: 'one row for each case: how many readers gave each grade' },
  },
} as const
