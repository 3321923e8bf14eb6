import type { FormWords } from '#core/forms/words.ts'

export const call = {
  kind: 'call',
  purpose: 'A try to speak with somebody. Nobody reached is a result, never “fine”.',
  sections: { call: 'Call' },
  fields: {
    contact: { label: 'With whom' },
    direction: { label: 'Who called?', options: { 'we-called': 'we called', 'they-called': 'they called' } },
    channel: { label: 'How', options: { phone: 'phone', message: 'message', email: 'email', letter: 'letter' } },
    about: {
      label: 'About',
      options: {
        'first-call': 'first call after surgery',
        ward: 'how it is in the ward',
        result: 'result',
        check: 'check',
        'twelve-months': 'after a year',
        estimate: 'costs',
        worry: 'a worry',
        other: 'something else',
      },
    },
    reached: { label: 'Reached?', options: { yes: 'yes', no: 'nobody reached', 'message-left': 'message left' } },
    text: { label: 'What was said' },
  },
} as const satisfies FormWords
