import type { OwnerLinkState } from '#core/people/owner-link-state.ts'
import type { VetLinkState } from '#core/people/vet-link-state.ts'

/** What is said of private links to a page about a case, whoever they are for. */
export const caseLinksInEnglish = {
  away: 'Links are made by the server. The clinic’s server does not answer; nothing can be made or ended now.',
  toPeople: 'People of this animal',
  made: 'The address for {name}. It is shown only now; it cannot be told again.',
  until: 'It opens until {when}.',
  address: 'Address',
  copy: 'Copy',
  copied: 'Copied.',
  select: 'Select the address and copy it.',
  openIt: 'Open it in a new tab',
  within:
    'It begins with the address under which you opened this program: {origin}. Outside the clinic it opens only if that address can be reached from there.',
  none: 'No link was made yet.',
  columns: { made: 'Made', opens: 'Opens', opened: 'Last opened' },
  madeBy: '{when}, {person}',
  opensUntil: 'until {when}',
  never: 'never',
  endedBy: 'ended {when}, {person}',
  endedByRestore: 'ended {when}, when a backup was put back',
  end: 'End',
  endOf: 'End the link for {name} made {when}',
  endSure: 'End this link of {name}? It closes at once and cannot be opened again.',
  endDone: 'The link of {name} is ended.',
  readOnly: 'Links are made and ended by people who write in the record.',
  states: {
    open: 'opens',
    ended: 'ended',
    'run-out': 'run out',
    'animal-died': 'closed: the animal has died',
    erased: 'closed: erased',
  } satisfies Record<OwnerLinkState & VetLinkState, string>,
} as const
