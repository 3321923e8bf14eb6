import type { FormWords } from '#core/forms/words.ts'
import { ledgerInEnglish } from '../ledger.ts'

export const observation = {
  kind: 'observation',
  purpose: 'What was measured at one moment. A wrong reading is marked, never deleted.',
  sections: { where: 'Where, and first events', values: 'Values', pain: 'Pain score', words: 'What was seen or done' },
  fields: {
    where: { label: 'Where', options: { theatre: 'theatre', recovery: 'recovery', ward: 'ward' } },
    first: {
      label: 'First time since anaesthesia',
      options: {
        blink: 'blink',
        sternal: 'lies on the breastbone',
        'normal-temperature': 'temperature normal',
        eaten: 'has eaten',
        walked: 'has walked',
      },
      none: 'none of these',
    },
    side: { label: 'Whose eye blinked', none: 'not said' },
    unmeasured: {
      label: 'Why nothing could be measured',
      help: 'Only where nothing could be: the moment is kept, and stays a gap.',
    },
    values: { label: 'Values', add: 'Add a value', item: 'Value {number}' },
    'values.what': {
      label: 'What',
      options: ledgerInEnglish.names,
    },
    'values.value': { label: 'Value' },
    'values.method': { label: 'How measured', help: 'Method and place. A pressure says little without.' },
    'values.artefact': { label: 'Artefact: not a true value' },
    pain: {
      label: 'Pain score',
      help: 'Mind a weak or bandaged side: items of the face mislead there.',
      open: 'Score pain now',
    },
    'pain.scale': { label: 'Scale, with its version' },
    'pain.score': { label: 'Score' },
    'pain.outOf': { label: 'Out of' },
    text: { label: 'What was seen or done' },
  },
} as const satisfies FormWords
