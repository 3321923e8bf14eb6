import type { Convention } from '#core/dosing/container.ts'

/** How a bag or syringe is made, step by step, and what it is tied to. */
export const infusionWords = {
  conventions: {
    'made-up': 'the syringe is made up to its volume with fluid',
    withdrawn: 'as much fluid as drug is taken out first; the bag keeps its volume',
    added: 'the drugs come on top of the full bag; nothing is taken out',
  },
  dilute: 'Make 1 in {parts} of {drug} {stock} first: {from}.',
  draw: 'Draw {drawn} of {drug} {from}: {amount}.',
  fluid: {
    'made-up': 'Draw {fluid} of fluid beside it: {final} in all.',
    withdrawn: 'Take {fluid} out of the {volume} bag, then add the drugs: {final} in all.',
    added: 'Add the drugs to the full bag of {volume}: {final} in all.',
  },
  label: 'Label: {contents} in {final}, {rate}, for {hours} h.',
  loading: 'First, at once: {taken} ({amount}).',
  loadingAmount: 'First, at once: {amount}.',
  loadingDiluted: 'It is drawn from 1 in {parts}.',
  pump: 'Pump: {rate}.',
  drip: 'By hand, at {set}: {count} drops a minute, which gives {gives}.',
  dripHours: 'Drops a minute while stable: {hours}.',
  dripHour: 'hour {hour} {count}',
  dripTogether: 'With the loss made good: {count} drops a minute.',
  hours: 'While stable: {hours}; {total} in all.',
  hour: 'hour {hour} {rate}',
  deficit: 'With the loss made good: {volume} in {over}, so {together} together.',
  maintenance: 'Maintenance alone is {rate}.',
  dispense: 'For {days} days: {doses} doses, {amount} in all.',
  tied: 'The {kind} is tied to {rate}: another rate is another dose. Never give a bolus from it.',
} as const satisfies { conventions: Record<Convention, string>; fluid: Record<Convention, string> } & Record<
  string,
  unknown
>
