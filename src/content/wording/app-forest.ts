/** The forest plot of the sources page, with the table that says the same. */
export const forestInEnglish = {
  caption: '{outcome}, {animals}, by {unit}',
  columns: { study: 'Study', counted: 'Counted', share: 'Of 100', interval: '95 % interval', drawn: '0 to 100 of 100' },
  typical: 'Typical study',
  typicalHow: 'binomial–normal model',
  prediction: 'another study would lie between {low} and {high}',
  noPrediction: 'too few studies to say where another would lie',
  expected: 'A clinic nobody has counted',
  expectedHow: 'predictive distribution',
  none: 'no figure',
  apart: 'Between the studies: τ² {tau2}, I² {i2} % (from τ²), Q {q} on {df}, p {p}.',
  withoutTitle: 'Typical study without …',
  leftOut: 'Left out, and why',
  leftOutLine: '{study}, {what}: {because}',
  reading: '{study}, reading {reading}',
} as const
