import type { VetLinkState } from '#core/people/vet-link-state.ts'
import type { VetStretch } from '../follow-up/vet-link-rules.ts'

/** The links for referring practices, on the page of the case. */
export const vetLinksInEnglish = {
  title: 'Referring practice',
  open: 'Show the links for the referring practice',
  lead: 'A short form with our coded questions about the operated ear, for a look made at another practice. It opens without an account for whoever has its address, and shows name, species, ear and day, nothing else of the record.',
  away: 'Links are made by the server. The clinic’s server does not answer; nothing can be made or ended now.',
  noVet: 'No practice is named for this animal. Name its referring vet, or add a vet to its people; then make a link.',
  toPeople: 'People of this animal',
  notOperated: 'No ear is on record as operated yet: there is nothing to look at.',
  died: 'The animal has died: nobody is asked about it any more.',
  whom: 'Practice',
  what: 'What they are asked to look at',
  stretchesTitle: 'Whatever they see for some time',
  looksTitle: 'One look that is owed',
  look: '{what}, until {day}',
  stretches: {
    'weeks-6': 'for 6 weeks',
    'months-6': 'for 6 months',
    'months-14': 'for 14 months',
  } satisfies Record<VetStretch, string>,
  make: 'Make a link',
  none: 'No link was made yet.',
  list: 'Links of the referring practice',
  whose: 'For {name}: {asked}',
  whoseEar: 'For {name}: {asked}, {side} ear',
  asks: {
    stitches: 'stitches and wound',
    wound: 'the wound in week 4',
    'face-and-eye': 'face and eye',
    recheck: 'recheck',
    year: 'after a year',
    stretch: 'whatever they see',
  },
  states: {
    open: 'opens',
    ended: 'ended',
    'run-out': 'run out',
    'animal-died': 'closed: the animal has died',
    'vet-gone': 'closed: no longer a practice of this animal',
    erased: 'closed: erased',
  } satisfies Record<VetLinkState, string>,
  endOf: 'End the link for {name} made {when}',
  endSure: 'End this link of {name}? It closes at once and cannot be opened again.',
  endDone: 'The link of {name} is ended.',
} as const
