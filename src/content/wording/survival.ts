/** Words of the command `survival`. */
export const survivalInEnglish = {
  group: 'Group {group}',
  everybody: 'All',
  counted: '{n} followed, {events} with the event',
  otherEnds: '{count} ended otherwise',
  median: 'median {value} ({low} to {high})',
  notReached: 'not reached',
  unknownEnd: 'no limit',
  mean: 'mean until {horizon}: {value} (standard error {error})',
  columns: {
    time: 'Time',
    atRisk: 'Followed',
    events: 'Event',
    censored: 'Left',
    survival: 'Without',
    interval: '95 % interval',
    event: 'With event',
    competing: 'Ended otherwise',
  },
  incidence: 'With the event, other ends counted as ends of their own',
  more: '{count} more times; --json has them all',
  compared: 'Log-rank: chi-square {chisq} on {df}, p = {p}',
  notes: {
    'other-ends-leave':
      '{count} ended otherwise and count here as leaving. One minus this curve is then too high for a risk; ask with --competing.',
    'mean-beyond': 'No mean until {horizon}: somebody of group {group} was last seen at {last}, without the event.',
    'not-compared': 'The groups cannot be compared: {why}.',
    'no-event': 'Group {group} has no event, so a log-log interval does not exist.',
  },
  whyNotCompared: {
    'fewer-than-two-groups': 'fewer than two groups hold anybody at risk when an event happens',
    'no-spread': 'all that are followed have the event at one and the same time',
    'nobody-followed': 'nobody is followed',
    'time-not-usable': 'a time cannot be used',
  },
  method:
    'Kaplan–Meier with Greenwood’s variance, limits on the {scale} scale; other ends by Aalen–Johansen with the delta-method variance and log-log limits.',
} as const
