/** What waits on this device, in English. */
export const keptInEnglish = {
  title: 'Kept on this device',
  lead: 'Entries written here that the server does not have yet. They are sent by themselves, in the order of writing.',
  none: 'Nothing waits here: the server has every entry written on this device.',
  back: 'To what is owed',
  of: '{kind}: {name}',
  states: {
    waiting: 'will be sent',
    'sign-in': 'will be sent after signing in',
    refused: 'not accepted',
  },
  keptAside: 'Another entry with the same number is on the server; both are kept, and a person compares them.',
  written: 'Written {when} by {who}',
  text: 'What was written',
  contact: 'Name and phone of {name}',
  drop: 'Let it go',
  dropSure: 'Let this entry go? It then exists nowhere. Copy its text first if it is needed.',
  sendNow: 'Send now',
} as const
