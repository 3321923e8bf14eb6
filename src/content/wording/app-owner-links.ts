import type { OwnerLinkState } from '#core/people/owner-link-state.ts'
import { caseLinksInEnglish } from './app-case-links.ts'

/** The private links to the owner's page, on the page of the case. */
export const ownerLinksInEnglish = {
  ...caseLinksInEnglish,
  title: 'The owner’s page',
  open: 'Show the private links of this case',
  lead: 'What was found, the choices with their numbers, and what matters to the owner, on a page of its own; once the animal is at home also the page for home, notes with photographs, and your answers. It opens without an account for whoever has its address; nothing else of the clinic does.',
  noOwner: 'No owner is among the people of this animal yet. Add one, then make a link.',
  make: 'Make a private link for {name}',
  show: 'Show on this tablet, for {name}',
  list: 'Links of this case',
  whose: 'For {name}, {use}',
  uses: { private: 'at home', 'in-room': 'in the room' },
  states: {
    ...caseLinksInEnglish.states,
    'person-gone': 'closed: no longer among the people of the animal',
  } satisfies Record<OwnerLinkState, string>,
} as const
