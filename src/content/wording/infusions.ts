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
  tied: 'The {kind} is tied to {rate}: another rate is another dose. Never give a bolus from it.',
} as const satisfies { conventions: Record<Convention, string>; fluid: Record<Convention, string> } & Record<
  string,
  unknown
>
