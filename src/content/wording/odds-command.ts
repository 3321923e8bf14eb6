/** What the command `odds` says of counts that it was given without saying of what. */
export const oddsCommandInEnglish = {
  columns: { outcome: 'outcome', studies: 'studies', middle: 'of 100', range: 'between', own: 'own' },
  raw: {
    expected:
      'Of 100, {middle} had it, and {rest} did not; at a place that nobody has counted between {low} and {high}.',
    updated:
      'Of 100, {middle} had it, and {rest} did not; here probably between {low} and {high}, with {total} of our own.',
    beyond:
      'The own results lie so far from the studies that the two cannot be joined. Give them some weight of their own (robust above 0), or look at them apart.',
    nothing: 'No study and no case of our own: nothing can be said.',
  },
  own: {
    nobody: 'none of our own is known',
    'none-yet': 'none of {total} had it; by itself that could still mean up to {upTo} of 100',
    withheld: '{total} of our own are too few to show by themselves; shown from {from} on',
    shown: 'enough of our own are known to show by themselves',
  },
  unknownFactor: '"{given}" is not a circumstance that is known here; write one of {list}.',
  nothingKnown: 'Nothing is known of this circumstance for this outcome.',
  direction: { more: 'A study says more, without a ratio.', fewer: 'A study says fewer, without a ratio.' },
  asWithout:
    'Put on the log odds scale, as if the figure were of animals without it; that makes it a little too strong. Not adjusted for other circumstances.',
} as const
